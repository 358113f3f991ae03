//! What has happened, for a task that waits for it.

use std::cell::RefCell;
use std::collections::VecDeque;
use std::future::poll_fn;
use std::task::{Poll, Waker};

/// Filled by callbacks, emptied by one task. The task goes on before the browser draws next.
pub struct Inbox<T> {
    waiting: RefCell<VecDeque<T>>,
    waker: RefCell<Option<Waker>>,
}

impl<T> Inbox<T> {
    pub const fn new() -> Self {
        Self {
            waiting: RefCell::new(VecDeque::new()),
            waker: RefCell::new(None),
        }
    }

    pub fn push(&self, happened: T) {
        self.waiting.borrow_mut().push_back(happened);
        if let Some(waker) = self.waker.take() {
            waker.wake();
        }
    }

    pub async fn next(&self) -> T {
        poll_fn(|context| {
            let next = self.waiting.borrow_mut().pop_front();
            if next.is_none() {
                self.waker.replace(Some(context.waker().clone()));
            }
            next.map_or(Poll::Pending, Poll::Ready)
        })
        .await
    }
}
