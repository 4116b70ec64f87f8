//! What came in is answered, in the order in which it came.

use super::{Line, back_off};
use crate::desk::reception::Arrival;

/// Answers until told to stop; what waits then is answered after the next start.
pub async fn run(mut line: Line) {
    let mut failures = 0;
    while !line.stopping() {
        let reception = line.reception.clone();
        let next = tokio::task::spawn_blocking(move || reception.next_few()).await;
        let arrivals = match next {
            Ok(Ok(arrivals)) if !arrivals.is_empty() => arrivals,
            Ok(Ok(_)) => {
                let mut stop = line.stop.clone();
                tokio::select! {
                    () = line.came_in.notified() => {}
                    _ = stop.changed() => {}
                }
                continue;
            }
            _ => {
                failures += 1;
                tracing::error!(failures, "what waits could not be read");
                line.rest(back_off(failures)).await;
                continue;
            }
        };
        match answered(&line, arrivals).await {
            Some(Ok(count)) => {
                failures = 0;
                line.counts.answered.add(count);
                line.written.notify_one();
            }
            Some(Err(fault)) => {
                failures += 1;
                tracing::error!(%fault, failures, "answers could not be filed");
                line.rest(back_off(failures)).await;
            }
            None => break,
        }
    }
}

type Done = Result<usize, crate::garden::StoreError>;

/// Answers these together; where one of them cannot be worked on, the first alone.
async fn answered(line: &Line, arrivals: Vec<Arrival>) -> Option<Done> {
    let first = arrivals.first()?.clone();
    let (reception, now, several) = (line.reception.clone(), (line.clock)(), arrivals.len() > 1);
    if let Ok(done) = tokio::task::spawn_blocking(move || reception.answer_all(&arrivals, now)).await {
        if let Ok(count) = done {
            tracing::debug!(first = first.number, count, "answered");
        }
        return Some(done);
    }
    if several {
        let (reception, first) = (line.reception.clone(), first.clone());
        if let Ok(done) = tokio::task::spawn_blocking(move || reception.answer(&first, now)).await {
            return Some(done.map(|()| 1));
        }
    }
    // It must not be tried for ever: it is set aside and its sender told.
    tracing::error!(number = first.number, "a message could not be worked on");
    line.counts.set_aside.add(1);
    let reception = line.reception.clone();
    tokio::task::spawn_blocking(move || reception.set_aside(&first, now)).await.ok().map(|done| done.map(|()| 1))
}
