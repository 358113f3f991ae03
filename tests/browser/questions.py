"""The questions of the page, and when their answers are complete."""

import touch

QUESTIONS = ["Jump", "Why", "Goal", "Map", "Compare"]


def ask(page, question):
    """Shows the answer to a question and waits until it is complete."""
    touch.tap(page, *page.centre(f"question:{question}"))
    complete = {
        "Jump": lambda: True,
        "Why": lambda: page.outputs().get("gain:jump_height_m"),
        "Goal": lambda: page.outputs().get("goal:combination"),
        "Map": lambda: page.outputs().get("map:done", "").startswith("61 x 61 "),
        "Compare": lambda: page.outputs().get("compare:sentence"),
    }
    if question == "Compare":
        page.wait_until("a reference to choose", lambda: "reference:as opened" in page.rects())
        touch.tap(page, *page.centre("reference:as opened"))
    page.wait_until(question, lambda: page.is_settled() and complete[question]())
    page.next_frames(4)
