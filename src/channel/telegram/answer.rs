//! What came in is answered, in the order in which it came.

use super::{Line, back_off};

/// Answers until told to stop; what waits then is answered after the next start.
pub async fn run(mut line: Line) {
    let mut failures = 0;
    while !line.stopping() {
        let reception = line.reception.clone();
        let next = tokio::task::spawn_blocking(move || reception.next()).await;
        let arrival = match next {
            Ok(Ok(Some(arrival))) => arrival,
            Ok(Ok(None)) => {
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
        let (reception, now, number) = (line.reception.clone(), (line.clock)(), arrival.number);
        let again = arrival.clone();
        let answered = tokio::task::spawn_blocking(move || reception.answer(&arrival, now)).await;
        let done = match answered {
            Ok(done) => done,
            Err(_) => {
                // It must not be tried for ever: it is set aside and its sender told.
                tracing::error!(number, "a message could not be worked on");
                line.counts.set_aside.add(1);
                let reception = line.reception.clone();
                match tokio::task::spawn_blocking(move || reception.set_aside(&again, now)).await {
                    Ok(done) => done,
                    Err(_) => break,
                }
            }
        };
        match done {
            Ok(()) => {
                failures = 0;
                line.counts.answered.add(1);
                tracing::debug!(number, "answered");
                line.written.notify_one();
            }
            Err(fault) => {
                failures += 1;
                tracing::error!(%fault, number, failures, "an answer could not be filed");
                line.rest(back_off(failures)).await;
            }
        }
    }
}
