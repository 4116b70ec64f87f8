//! `/healthz` and `/metrics` on a port of this machine alone.

use super::counts::Counts;
use chrono::{DateTime, FixedOffset};
use std::io;
use std::sync::Arc;
use std::time::Duration;
use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::{TcpListener, TcpStream};

/// A request that is longer or slower than this is none of ours.
const LONGEST: usize = 4096;
const SLOWEST: Duration = Duration::from_secs(5);

/// Takes the port.
///
/// # Errors
/// When it is taken already.
pub async fn open(port: u16) -> io::Result<TcpListener> {
    TcpListener::bind(("127.0.0.1", port)).await
}

/// Answers until the task is ended.
pub async fn run(listener: TcpListener, counts: Arc<Counts>, clock: fn() -> DateTime<FixedOffset>) {
    loop {
        if let Ok((stream, _)) = listener.accept().await {
            let counts = counts.clone();
            tokio::spawn(async move {
                // Whoever breaks off gets no answer.
                let _ = tokio::time::timeout(SLOWEST, answer(stream, &counts, clock().timestamp())).await;
            });
        }
    }
}

async fn answer(mut stream: TcpStream, counts: &Counts, now: i64) -> io::Result<()> {
    let mut got = Vec::new();
    let mut part = [0; 512];
    while !got.windows(4).any(|end| end == b"\r\n\r\n") && got.len() < LONGEST {
        match stream.read(&mut part).await? {
            0 => break,
            read => got.extend(part.iter().take(read)),
        }
    }
    let head = String::from_utf8_lossy(&got).into_owned();
    let (status, body) = reply(head.lines().next().unwrap_or_default(), counts, now);
    let kind = "text/plain; version=0.0.4; charset=utf-8";
    let length = body.len();
    let whole = format!(
        "HTTP/1.1 {status}\r\nContent-Type: {kind}\r\nContent-Length: {length}\r\nConnection: close\r\n\r\n{body}"
    );
    stream.write_all(whole.as_bytes()).await?;
    stream.shutdown().await
}

fn reply(request: &str, counts: &Counts, now: i64) -> (&'static str, String) {
    let mut words = request.split(' ');
    match (words.next(), words.next()) {
        (Some("GET"), Some("/healthz")) if counts.healthy(now) => ("200 OK", "ok\n".to_owned()),
        (Some("GET"), Some("/healthz")) => {
            ("503 Service Unavailable", "the messenger has not answered for two minutes\n".to_owned())
        }
        (Some("GET"), Some("/metrics")) => ("200 OK", counts.text(now)),
        (Some("GET"), _) => ("404 Not Found", "here are /healthz and /metrics\n".to_owned()),
        _ => ("405 Method Not Allowed", "GET only\n".to_owned()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn health_and_numbers() {
        let counts = Counts::default();
        assert_eq!(reply("GET /healthz HTTP/1.1", &counts, 1000).0, "503 Service Unavailable");
        counts.polled(1000);
        counts.sent.add(3);
        assert_eq!(reply("GET /healthz HTTP/1.1", &counts, 1100), ("200 OK", "ok\n".to_owned()));
        assert_eq!(reply("GET /healthz HTTP/1.1", &counts, 1121).0, "503 Service Unavailable");
        let text = reply("GET /metrics HTTP/1.1", &counts, 1007).1;
        assert!(text.contains("# TYPE rooftend_letters_sent_total counter\nrooftend_letters_sent_total 3\n"), "{text}");
        assert!(text.contains("rooftend_last_poll_age_seconds 7\n"), "{text}");
        assert_eq!(reply("POST /metrics HTTP/1.1", &counts, 1007).0, "405 Method Not Allowed");
        assert_eq!(reply("GET / HTTP/1.1", &counts, 1007).0, "404 Not Found");
    }
}
