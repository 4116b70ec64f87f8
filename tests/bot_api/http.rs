//! As much of HTTP/1.1 as a client of the Bot API speaks: requests with a length, JSON or multipart bodies.

use serde_json::{Map, Value, json};
use std::io::{self, BufRead, BufReader, Read, Write};
use std::net::TcpStream;

/// One call as it came in.
pub struct Request {
    pub path: String,
    pub body: Value,
}

/// The next request of a connection; None when the client is done.
pub fn read(stream: &mut BufReader<TcpStream>) -> io::Result<Option<Request>> {
    let mut line = String::new();
    if stream.read_line(&mut line)? == 0 {
        return Ok(None);
    }
    let path = line.split(' ').nth(1).unwrap_or_default().to_owned();
    let (mut length, mut kind, mut chunked) = (0, String::new(), false);
    loop {
        let mut header = String::new();
        if stream.read_line(&mut header)? == 0 || header.trim().is_empty() {
            break;
        }
        let (name, value) = header.split_once(':').unwrap_or_default();
        match name.to_lowercase().as_str() {
            "content-length" => length = value.trim().parse().unwrap_or(0),
            "content-type" => kind = value.trim().to_owned(),
            "transfer-encoding" => chunked = value.contains("chunked"),
            _ => {}
        }
    }
    let body = if chunked { unchunked(stream)? } else { exactly(stream, length)? };
    let body = match kind.split_once("boundary=") {
        Some((_, boundary)) => multipart(&body, boundary.trim_matches('"')),
        None if body.is_empty() => json!({}),
        None => serde_json::from_slice(&body).unwrap_or(Value::Null),
    };
    Ok(Some(Request { path, body }))
}

fn exactly(stream: &mut impl Read, length: usize) -> io::Result<Vec<u8>> {
    let mut body = vec![0; length];
    stream.read_exact(&mut body)?;
    Ok(body)
}

fn unchunked(stream: &mut BufReader<TcpStream>) -> io::Result<Vec<u8>> {
    let mut body = Vec::new();
    loop {
        let mut size = String::new();
        stream.read_line(&mut size)?;
        let size = usize::from_str_radix(size.trim(), 16).unwrap_or(0);
        body.extend(exactly(stream, size)?);
        stream.read_line(&mut String::new())?;
        if size == 0 {
            return Ok(body);
        }
    }
}

/// The fields of a form; a file is an object with its name and text.
fn multipart(body: &[u8], boundary: &str) -> Value {
    let text = String::from_utf8_lossy(body).into_owned();
    let mut fields = Map::new();
    for part in text.split(&format!("--{boundary}")) {
        let Some((head, content)) = part.split_once("\r\n\r\n") else { continue };
        let named = |what: &str| {
            let (_, rest) = head.split_once(&format!("{what}=\""))?;
            rest.split_once('"').map(|(name, _)| name.to_owned())
        };
        let content = content.trim_end_matches("\r\n").to_owned();
        let value = match named("filename") {
            Some(file) => match png(body, head) {
                Some((bytes, width, height)) => {
                    json!({"file_name": file, "bytes": bytes, "width": width, "height": height})
                }
                None => json!({"file_name": file, "text": content}),
            },
            None => serde_json::from_str(&content).unwrap_or(Value::String(content)),
        };
        fields.insert(named(" name").unwrap_or_default(), value);
    }
    // "attach://part" stands for the file in that part.
    let attached: Vec<(String, String)> = fields
        .iter()
        .filter_map(|(name, value)| Some((name.clone(), value.as_str()?.strip_prefix("attach://")?.to_owned())))
        .collect();
    for (name, part) in attached {
        if let Some(file) = fields.remove(&part) {
            fields.insert(name, file);
        }
    }
    Value::Object(fields)
}

/// The size of the PNG file whose part begins with this head: its bytes up to the end of the `IEND` chunk, and its
/// width and height from `IHDR` (PNG specification, 2nd edition, 11.2.2).
fn png(body: &[u8], head: &str) -> Option<(usize, u32, u32)> {
    let from = position(body, head.trim_start().as_bytes())?;
    let file = body.get(from..)?;
    let start = position(file, b"\r\n\r\n")? + 4;
    let file = file.get(start..)?;
    let signed = file.starts_with(b"\x89PNG\r\n\x1a\n") && file.get(12..16) == Some(b"IHDR");
    let number = |at: usize| Some(u32::from_be_bytes(file.get(at..at + 4)?.try_into().ok()?));
    let end = position(file, b"IEND\xaeB`\x82")? + 8;
    if signed { Some((end, number(16)?, number(20)?)) } else { None }
}

fn position(of: &[u8], what: &[u8]) -> Option<usize> {
    of.windows(what.len()).position(|window| window == what)
}

pub fn write(stream: &mut TcpStream, status: u16, body: &str) -> io::Result<()> {
    let length = body.len();
    let head = format!("HTTP/1.1 {status} x\r\nContent-Type: application/json\r\nContent-Length: {length}\r\n\r\n");
    stream.write_all(format!("{head}{body}").as_bytes())?;
    stream.flush()
}
