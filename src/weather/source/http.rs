//! Asking a service over HTTP, with the manners that open services ask for.

use super::fault::Fault;
use super::{Answered, Fetched, Outlook, Service};
use chrono::{DateTime, TimeDelta, Utc};
use reqwest::header::{EXPIRES, HeaderMap, HeaderName, IF_MODIFIED_SINCE, LAST_MODIFIED, RETRY_AFTER};
use reqwest::{Client, StatusCode};
use std::time::Duration;

/// A connection is given up after this long…
const CONNECTS_WITHIN: Duration = Duration::from_secs(10);
/// …and an answer after this.
const ANSWERS_WITHIN: Duration = Duration::from_secs(30);
/// No forecast of one place is larger: ten days by the hour are some 60 kB, sixteen days of all that a service has less
/// than a megabyte.
const LARGEST: usize = 4 * 1024 * 1024;

/// One service's server.
pub struct Http {
    base: String,
    client: Client,
}

/// What came back with status 200, 203 or 304.
pub struct Response {
    /// None for 304.
    pub text: Option<String>,
    pub last_modified: Option<String>,
    pub expires: Option<DateTime<Utc>>,
    pub deprecated: bool,
}

impl Response {
    /// What it comes to, its document read by its service's own reader.
    pub fn answered(self, read: impl FnOnce(&str) -> Result<Outlook, Fault>) -> Result<Answered, Fault> {
        let Self { text, last_modified, expires, deprecated } = self;
        match text {
            None => Ok(Answered::Same { expires }),
            Some(text) => {
                Ok(Answered::New(Box::new(Fetched { outlook: read(&text)?, last_modified, expires, deprecated })))
            }
        }
    }
}

impl Http {
    /// A client that says who it is; `contact` is whom the service may write to.
    pub fn new(base: &str, contact: Option<&str>) -> Result<Self, Fault> {
        let client = Client::builder()
            .user_agent(user_agent(contact))
            .connect_timeout(CONNECTS_WITHIN)
            .timeout(ANSWERS_WITHIN)
            // A position goes to the service that was chosen and nowhere else.
            .redirect(reqwest::redirect::Policy::none())
            .build();
        let client = client
            .map_err(|_| Fault::Unreachable { service: Service::File, what: "this machine makes no connections" })?;
        Ok(Self { base: base.to_owned(), client })
    }

    /// Asks for a path; `since` is the date of the document that is known.
    pub async fn get(&self, service: Service, path: &str, since: Option<&str>) -> Result<Response, Fault> {
        let mut request = self.client.get(format!("{}{path}", self.base));
        if let Some(since) = since {
            request = request.header(IF_MODIFIED_SINCE, since);
        }
        let mut response = request.send().await.map_err(|fault| unreachable(service, &fault))?;
        let (status, headers) = (response.status(), response.headers().clone());
        let text = match status {
            StatusCode::OK | StatusCode::NON_AUTHORITATIVE_INFORMATION => Some(whole(service, &mut response).await?),
            StatusCode::NOT_MODIFIED => None,
            StatusCode::TOO_MANY_REQUESTS => return Err(Fault::Busy { service, wait: wait(&headers) }),
            status if status.is_server_error() => {
                return Err(Fault::OutOfOrder { service, status: status.as_u16() });
            }
            status => return Err(Fault::Refused { service, status: status.as_u16() }),
        };
        Ok(Response {
            text,
            last_modified: header(&headers, &LAST_MODIFIED).map(str::to_owned),
            expires: header(&headers, &EXPIRES).and_then(moment),
            deprecated: status == StatusCode::NON_AUTHORITATIVE_INFORMATION,
        })
    }
}

/// Name and version, and whom to write to where one was named.
fn user_agent(contact: Option<&str>) -> String {
    let name = concat!("rooftend/", env!("CARGO_PKG_VERSION"));
    let plain = |contact: &&str| contact.bytes().all(|byte| (b' '..=b'~').contains(&byte));
    contact.filter(plain).map_or_else(|| name.to_owned(), |contact| format!("{name} ({contact})"))
}

async fn whole(service: Service, response: &mut reqwest::Response) -> Result<String, Fault> {
    let document = |what: &str| Fault::Document { service, place: "the document".to_owned(), what: what.to_owned() };
    let mut bytes = Vec::new();
    while let Some(chunk) = response.chunk().await.map_err(|fault| unreachable(service, &fault))? {
        bytes.extend_from_slice(&chunk);
        if bytes.len() > LARGEST {
            return Err(document("it is longer than 4 MB; a forecast of one place expected"));
        }
    }
    String::from_utf8(bytes).map_err(|_| document("it is not UTF-8; JSON expected"))
}

/// The client's own words hold the address and so the position: only what kind of fault it was is told.
fn unreachable(service: Service, fault: &reqwest::Error) -> Fault {
    let what = if fault.is_timeout() {
        "no answer in time"
    } else if fault.is_connect() {
        "no connection"
    } else {
        "the connection broke off"
    };
    Fault::Unreachable { service, what }
}

fn header<'h>(headers: &'h HeaderMap, name: &HeaderName) -> Option<&'h str> {
    headers.get(name)?.to_str().ok()
}

/// A date of HTTP (RFC 9110, section 5.6.7).
fn moment(text: &str) -> Option<DateTime<Utc>> {
    DateTime::parse_from_rfc2822(text).ok().map(|at| at.with_timezone(&Utc))
}

/// Seconds to wait, where they are given as a number: dates are left to the usual back-off.
fn wait(headers: &HeaderMap) -> Option<TimeDelta> {
    header(headers, &RETRY_AFTER)?.trim().parse::<u32>().ok().map(|seconds| TimeDelta::seconds(seconds.into()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_of_headers() {
        let at = moment("Sun, 06 Nov 1994 08:49:37 GMT").unwrap();
        assert_eq!(at.to_rfc3339(), "1994-11-06T08:49:37+00:00");
        assert_eq!(moment("0"), None);
    }

    #[test]
    fn says_who_it_is() {
        assert!(user_agent(None).starts_with("rooftend/"));
        assert!(user_agent(Some("crew@example.org")).ends_with(" (crew@example.org)"));
        assert_eq!(user_agent(Some("a\r\nb")), user_agent(None));
    }
}
