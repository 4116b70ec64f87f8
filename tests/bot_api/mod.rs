//! A Bot API server of our own on the loopback: it holds every call against the published Bot API, delivers
//! updates by long polling, and makes the faults it is told to.
#![allow(dead_code, unused_imports, reason = "each test uses a part of it")]

mod checks;
mod clock;
pub mod crew;
pub mod crowd;
mod http;
mod people;
mod server;
mod typed;
mod webhook;

pub use clock::Clock;
pub use server::{BotApi, Call, Fault, Sent};
pub use webhook::post;

use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Child, Command, Output, Stdio};
use std::sync::mpsc::{Receiver, channel};
use std::time::Duration;

/// What is derived from the knowledge base is kept for all tests.
const KEPT: &str = concat!(env!("CARGO_TARGET_TMPDIR"), "/cache");

/// The token of the tests; it must never be seen in a log.
pub const TOKEN: &str = "4242:loopback-secret_TOKEN";

/// A running `rooftend serve`, killed when it is dropped.
pub struct Serving {
    child: Child,
    lines: Receiver<String>,
    errors: Receiver<String>,
}

fn lines(from: impl std::io::Read + Send + 'static) -> Receiver<String> {
    let (to, lines) = channel();
    std::thread::spawn(move || {
        for line in BufReader::new(from).lines().map_while(Result::ok) {
            if to.send(line).is_err() {
                break;
            }
        }
    });
    lines
}

impl Serving {
    pub fn start(data: &Path, api: &BotApi, more: &[(&str, &str)]) -> Self {
        let mut command = Command::new(program());
        command.env("ROOFTEND_CACHE", KEPT);
        command
            .arg("--data")
            .arg(data)
            .arg("serve")
            .env("ROOFTEND_TELEGRAM_TOKEN", TOKEN)
            .env("ROOFTEND_TELEGRAM_API_URL", api.url())
            .env("ROOFTEND_SEND_LIMITS", "off")
            .env("ROOFTEND_DIGEST", "off")
            .env("ROOFTEND_FORECAST", "demo-data/forecast-may.json")
            .env("ROOFTEND_LOG", "trace")
            .envs(more.iter().copied())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped());
        let mut child = command.spawn().unwrap();
        let (out, err) = (lines(child.stdout.take().unwrap()), lines(child.stderr.take().unwrap()));
        Self { child, lines: out, errors: err }
    }

    /// The next line on stdout that contains this.
    pub fn line(&self, with: &str) -> String {
        loop {
            match self.lines.recv_timeout(Duration::from_secs(60)) {
                Ok(line) if line.contains(with) => return line,
                Ok(_) => {}
                Err(_) => {
                    let told: Vec<String> = self.errors.try_iter().collect();
                    panic!("no line with \"{with}\" on stdout; stderr: {}", told.join("\n"));
                }
            }
        }
    }

    /// The number of its process.
    pub fn pid(&self) -> u32 {
        self.child.id()
    }

    /// All that was logged so far.
    pub fn logged(&self) -> String {
        self.errors.try_iter().collect::<Vec<_>>().join("\n")
    }

    /// Waits until it ends by itself; its exit code and what it logged.
    pub fn ended(mut self) -> (Option<i32>, String) {
        let code = self.child.wait().unwrap().code();
        let mut log = String::new();
        while let Ok(line) = self.errors.recv_timeout(Duration::from_secs(2)) {
            log.push_str(&line);
        }
        (code, log)
    }

    pub fn kill(mut self) {
        self.child.kill().unwrap();
        self.child.wait().unwrap();
    }

    /// Asks it to stop, as a service manager does; its exit code and what it logged.
    pub fn stop(mut self) -> (Option<i32>, String) {
        let pid = self.child.id().to_string();
        assert!(Command::new("kill").args(["-TERM", &pid]).status().unwrap().success());
        let code = self.child.wait().unwrap().code();
        let mut log = self.logged();
        while let Ok(line) = self.errors.recv_timeout(Duration::from_secs(2)) {
            log.push_str(&line);
            log.push('\n');
        }
        (code, log)
    }
}

impl Drop for Serving {
    fn drop(&mut self) {
        // It may have ended already.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// The program under test; another build of it where one is named, for measurements.
fn program() -> String {
    std::env::var("ROOFTEND_PROGRAM").unwrap_or_else(|_| env!("CARGO_BIN_EXE_rooftend").to_owned())
}

/// Another command beside it.
pub fn rooftend(data: &Path, arguments: &[&str]) -> Output {
    Command::new(program()).env("ROOFTEND_CACHE", KEPT).arg("--data").arg(data).args(arguments).output().unwrap()
}
