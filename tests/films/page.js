// Lets the test open, show and play films, and reads the bar code of what is on the screen.

import init, { Film } from "./film_page.js";

const CELLS = 16, BITS = 12, PARTS_OF_HEIGHT = 6;
const LONGEST_MS = 60_000;

const canvas = document.createElement("canvas");
const context = canvas.getContext("2d", { willReadFrequently: true });

let film, module, waiting = [];
const events = [];

function told(name, values) {
  events.push([name, ...values]);
  waiting = waiting.filter((wait) => !wait(name, values));
}

// Resolves with the values of the next event of this name that fits; rejects where the film fails.
function next(wanted, fits = () => true) {
  return new Promise((resolve, reject) => {
    const timeout = setTimeout(() => reject(new Error(`no ${wanted}; ${JSON.stringify(events.slice(-5))}`)), LONGEST_MS);
    waiting.push((name, values) => {
      if (name === "failed") reject(new Error(values[0]));
      else if (name !== wanted || !fits(...values)) return false;
      else resolve(values);
      clearTimeout(timeout);
      return true;
    });
  });
}

// As in bar_code.py: what is drawn of the video has the number of its frame along the top.
function barCode() {
  const video = document.querySelector("video");
  const { videoWidth: width, videoHeight: height } = video;
  canvas.width = width;
  canvas.height = 1;
  context.drawImage(video, 0, Math.floor(height / PARTS_OF_HEIGHT / 2), width, 1, 0, 0, width, 1);
  const { data } = context.getImageData(0, 0, width, 1);
  const seen = Array.from({ length: CELLS }, (_, cell) => data[4 * Math.floor(((2 * cell + 1) * width) / (2 * CELLS))]);
  if (seen[0] - seen[1] < 64) return null;
  const white = seen.map((value) => value > (seen[0] + seen[1]) / 2);
  const bits = white.slice(2, 2 + BITS);
  const count = bits.filter(Boolean).length % 4;
  if (white[14] !== !!(count & 2) || white[15] !== !!(count & 1)) return null;
  return bits.reduce((number, bit) => 2 * number + bit, 0);
}

window.films = {
  events,

  close() {
    film?.free();
    film = null;
    waiting = [];
    events.length = 0;
  },

  async open(file) {
    this.close();
    const shown = next("shown");
    film = new Film(file, document.getElementById("room"), told);
    window.film = film;
    await shown;
  },

  barCode,

  async show(frame) {
    const shown = next("shown", (now) => now === frame);
    film.show(frame);
    await shown;
    return barCode();
  },

  // Shows frames one after the other; returns the number seen in each, and how long each took, ms.
  async showAll(frames) {
    const seen = [], took = [];
    for (const frame of frames) {
      const start = performance.now();
      seen.push(await this.show(frame));
      took.push(performance.now() - start);
    }
    return { seen, took };
  },

  // Plays until so many frames have been told of; returns those.
  async playUntil(speed, count) {
    const passed = [];
    film.play(speed);
    while (passed.length < count) passed.push(...(await next("passing")));
    return passed;
  },

  async pause() {
    const shown = next("shown");
    film.pause();
    return (await shown)[0];
  },

  // What the module has of memory, bytes.
  memory: () => module.memory.buffer.byteLength,

  next,
};

init().then((loaded) => {
  module = loaded;
  document.documentElement.dataset.state = "ready";
});
