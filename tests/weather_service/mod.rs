//! A forecast server of our own on the loopback: it notes how it is asked, and answers with documents in the published
//! shapes, or with the faults it is told to make.
#![allow(dead_code, reason = "each test uses a part of it")]

pub mod documents;

use std::collections::VecDeque;
use std::io::{BufRead, BufReader, Write};
use std::net::{TcpListener, TcpStream};
use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};

/// How it was asked.
#[derive(Debug, Clone)]
pub struct Asked {
    pub path: String,
    pub user_agent: String,
    pub since: Option<String>,
}

/// What it answers.
#[derive(Debug, Clone)]
pub enum Reply {
    /// Status, headers, body.
    Whole(u16, Vec<(&'static str, String)>, String),
    /// The connection is closed without a word.
    Dead,
    /// More is promised than comes.
    Broken,
    /// The connection stays open and nothing comes.
    Silent,
}

impl Reply {
    pub fn document(body: String) -> Self {
        Self::Whole(200, Vec::new(), body)
    }

    pub fn status(status: u16) -> Self {
        Self::Whole(status, Vec::new(), String::new())
    }

    /// The same with one more header.
    pub fn with(self, name: &'static str, value: &str) -> Self {
        match self {
            Self::Whole(status, mut headers, body) => {
                headers.push((name, value.to_owned()));
                Self::Whole(status, headers, body)
            }
            other => other,
        }
    }
}

/// One server; it answers what it was told to, the last thing again and again.
pub struct Service {
    address: String,
    asked: Arc<Mutex<Vec<Asked>>>,
    replies: Arc<Mutex<VecDeque<Reply>>>,
}

impl Service {
    pub fn start(replies: impl IntoIterator<Item = Reply>) -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").unwrap();
        let address = format!("http://{}", listener.local_addr().unwrap());
        let asked: Arc<Mutex<Vec<Asked>>> = Arc::default();
        let replies: Arc<Mutex<VecDeque<Reply>>> = Arc::new(Mutex::new(replies.into_iter().collect()));
        let (notes, script) = (asked.clone(), replies.clone());
        std::thread::spawn(move || {
            for stream in listener.incoming().map_while(Result::ok) {
                let (notes, script) = (notes.clone(), script.clone());
                // A client that went away takes its answer with it.
                std::thread::spawn(move || drop(serve(stream, &notes, &script)));
            }
        });
        Self { address, asked, replies }
    }

    pub fn address(&self) -> &str {
        &self.address
    }

    /// From now on these.
    pub fn now_answers(&self, replies: impl IntoIterator<Item = Reply>) {
        *self.replies.lock().unwrap() = replies.into_iter().collect();
    }

    /// All calls so far.
    pub fn asked(&self) -> Vec<Asked> {
        self.asked.lock().unwrap().clone()
    }

    /// Waits until it was asked so often.
    pub fn was_asked(&self, times: usize) -> Vec<Asked> {
        let begun = Instant::now();
        while self.asked().len() < times {
            assert!(begun.elapsed() < Duration::from_secs(60), "asked {} times, {times} expected", self.asked().len());
            std::thread::sleep(Duration::from_millis(20));
        }
        self.asked()
    }
}

fn serve(stream: TcpStream, notes: &Mutex<Vec<Asked>>, script: &Mutex<VecDeque<Reply>>) -> std::io::Result<()> {
    let mut stream = BufReader::new(stream);
    let mut line = String::new();
    stream.read_line(&mut line)?;
    let path = line.split(' ').nth(1).unwrap_or_default().to_owned();
    let mut asked = Asked { path, user_agent: String::new(), since: None };
    loop {
        let mut header = String::new();
        if stream.read_line(&mut header)? == 0 || header.trim().is_empty() {
            break;
        }
        let (name, value) = header.split_once(':').unwrap_or_default();
        match name.to_lowercase().as_str() {
            "user-agent" => value.trim().clone_into(&mut asked.user_agent),
            "if-modified-since" => asked.since = Some(value.trim().to_owned()),
            _ => {}
        }
    }
    let reply = {
        let mut script = script.lock().unwrap();
        if script.len() > 1 { script.pop_front() } else { script.front().cloned() }
    };
    notes.lock().unwrap().push(asked);
    let out = stream.get_mut();
    match reply.unwrap_or(Reply::Dead) {
        Reply::Dead => Ok(()),
        Reply::Silent => loop {
            std::thread::park();
        },
        Reply::Broken => {
            out.write_all(b"HTTP/1.1 200 OK\r\nContent-Length: 5000\r\nConnection: close\r\n\r\n{\"geometry\"")
        }
        Reply::Whole(status, headers, body) => {
            let mut head = format!("HTTP/1.1 {status} -\r\nConnection: close\r\n");
            if status != 304 {
                head.push_str(&format!("Content-Length: {}\r\n", body.len()));
            }
            for (name, value) in headers {
                head.push_str(&format!("{name}: {value}\r\n"));
            }
            out.write_all(format!("{head}\r\n{body}").as_bytes())
        }
    }
}
