//! What is counted while the program runs, for whoever watches it.

use std::sync::atomic::{AtomicI64, AtomicUsize, Ordering};

/// One number.
#[derive(Debug, Default)]
pub struct Count(AtomicUsize);

impl Count {
    pub fn add(&self, more: usize) {
        self.0.fetch_add(more, Ordering::Relaxed);
    }
    pub fn set(&self, to: usize) {
        self.0.store(to, Ordering::Relaxed);
    }
    fn get(&self) -> usize {
        self.0.load(Ordering::Relaxed)
    }
}

/// All of them; none says who or what.
#[derive(Debug, Default)]
pub struct Counts {
    pub updates: Count,
    pub repeated: Count,
    pub answered: Count,
    pub set_aside: Count,
    pub sent: Count,
    pub send_failures: Count,
    pub poll_failures: Count,
    pub waiting: Count,
    pub questions: Count,
    pub backups: Count,
    pub forecasts: Count,
    pub forecast_failures: Count,
    /// Seconds since 1970 of the last poll that was answered; 0 before the first.
    polled: AtomicI64,
}

impl Counts {
    /// A poll was answered at this moment, in seconds since 1970.
    pub fn polled(&self, now: i64) {
        self.polled.store(now, Ordering::Relaxed);
    }

    /// Whether the messenger answered lately.
    #[must_use]
    pub fn healthy(&self, now: i64) -> bool {
        const LATELY_S: i64 = 120;
        now - self.polled.load(Ordering::Relaxed) <= LATELY_S
    }

    /// In the text format that collectors of metrics read.
    #[must_use]
    pub fn text(&self, now: i64) -> String {
        let mut text = String::new();
        let mut line = |name: &str, kind: &str, help: &str, value: String| {
            let whole = format!("# HELP {name} {help}\n# TYPE {name} {kind}\n{name} {value}\n");
            text.push_str(&whole);
        };
        let counters = [
            ("rooftend_updates_total", "Updates filed", &self.updates),
            ("rooftend_updates_repeated_total", "Updates brought again and dropped", &self.repeated),
            ("rooftend_answered_total", "Updates answered", &self.answered),
            ("rooftend_set_aside_total", "Updates that could not be worked on", &self.set_aside),
            ("rooftend_letters_sent_total", "Letters that arrived", &self.sent),
            ("rooftend_letter_failures_total", "Calls to send that failed", &self.send_failures),
            ("rooftend_poll_failures_total", "Polls that failed", &self.poll_failures),
            ("rooftend_backups_total", "Backups made since the start", &self.backups),
            ("rooftend_forecasts_total", "Calls for a forecast that were answered", &self.forecasts),
            ("rooftend_forecast_failures_total", "Calls for a forecast that failed", &self.forecast_failures),
        ];
        for (name, help, count) in counters {
            line(name, "counter", help, count.get().to_string());
        }
        line("rooftend_letters_waiting", "gauge", "Letters that wait", self.waiting.get().to_string());
        line("rooftend_questions_waiting", "gauge", "Questions that wait", self.questions.get().to_string());
        let polled = self.polled.load(Ordering::Relaxed);
        let age = if polled == 0 { "NaN".to_owned() } else { (now - polled).to_string() };
        line("rooftend_last_poll_age_seconds", "gauge", "Since the last poll that was answered", age);
        text
    }
}
