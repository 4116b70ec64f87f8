//! A call to a web address, as the platform makes it.

use std::io::{Read, Write};
use std::net::TcpStream;
use std::time::Duration;

/// Posts a body to an `http://` address; the status of the answer, where one came.
pub fn post(url: &str, headers: &[(&str, &str)], body: &str) -> Option<u16> {
    let rest = url.strip_prefix("http://")?;
    let (host, path) = rest.split_once('/').unwrap_or((rest, ""));
    let mut stream = TcpStream::connect(host).ok()?;
    stream.set_read_timeout(Some(Duration::from_secs(20))).ok()?;
    let length = body.len();
    let mut head = format!("POST /{path} HTTP/1.1\r\nHost: {host}\r\nContent-Type: application/json\r\n");
    for (name, value) in headers {
        head.push_str(&format!("{name}: {value}\r\n"));
    }
    head.push_str(&format!("Content-Length: {length}\r\nConnection: close\r\n\r\n"));
    stream.write_all(head.as_bytes()).ok()?;
    // Whoever refuses early does not read the body.
    let _ = stream.write_all(body.as_bytes());
    let mut answer = Vec::new();
    let _ = stream.read_to_end(&mut answer);
    let text = String::from_utf8_lossy(&answer).into_owned();
    text.split(' ').nth(1)?.parse().ok()
}
