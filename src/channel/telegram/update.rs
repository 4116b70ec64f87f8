//! A platform's update → an arrival: what we need of it and no more.

use crate::desk::reception::{Arrival, What};
use teloxide::types::{CallbackQuery, ChatKind, ChatMemberUpdated, Message, Update, UpdateKind, User};

/// The arrival in an update. `bot` is the name under which it is spoken to in a group.
pub fn arrival(update: Update, bot: Option<&str>) -> Arrival {
    let number = update.id.0;
    match update.kind {
        UpdateKind::Message(message) => of_message(number, &message, false, bot),
        UpdateKind::EditedMessage(message) => of_message(number, &message, true, bot),
        UpdateKind::CallbackQuery(query) => of_button(number, query),
        UpdateKind::MyChatMember(member) => of_member(number, &member),
        _ => nothing(number),
    }
}

/// Something we do nothing about; it is filed so that it is not brought again.
fn nothing(number: u32) -> Arrival {
    Arrival { number, ..Arrival::of_nobody(0, chrono::DateTime::UNIX_EPOCH) }
}

fn of_user(number: u32, user: &User) -> Arrival {
    let from = i64::try_from(user.id.0).unwrap_or_default();
    let (name, language) = (user.full_name(), user.language_code.clone());
    Arrival { chat: from, from, name, language, ..nothing(number) }
}

fn of_message(number: u32, message: &Message, edited: bool, bot: Option<&str>) -> Arrival {
    let Some(user) = message.from.as_ref().filter(|user| !user.is_bot) else { return nothing(number) };
    let group = match message.chat.kind {
        ChatKind::Private(_) => false,
        ChatKind::Public(_) if message.chat.is_channel() => return nothing(number),
        ChatKind::Public(_) => true,
    };
    let answered = message.reply_to_message();
    let to_us = answered.and_then(|answered| answered.from.as_ref()).is_some_and(|user| {
        user.is_bot && user.username.as_deref().zip(bot).is_some_and(|(name, bot)| name.eq_ignore_ascii_case(bot))
    });
    let (what, named) = what(message, bot);
    Arrival {
        chat: message.chat.id.0,
        group,
        addressed: !group || named || to_us,
        message: message.id.0,
        reply_to: answered.map(|answered| answered.id.0),
        edited,
        at: message.date,
        what,
        ..of_user(number, user)
    }
}

/// What a message is, and whether it calls the bot by name.
fn what(message: &Message, bot: Option<&str>) -> (What, bool) {
    if let Some(text) = message.text() {
        let (text, named) = without_name(text, bot);
        return (if text.is_empty() { What::Other } else { What::Text(text) }, named);
    }
    if let Some(place) = message.location() {
        return (What::Place { latitude_deg: place.latitude, longitude_deg: place.longitude }, false);
    }
    let media = message.photo().is_some()
        || message.voice().is_some()
        || message.audio().is_some()
        || message.video().is_some()
        || message.video_note().is_some()
        || message.document().is_some();
    if media {
        let (caption, named) = without_name(message.caption().unwrap_or_default(), bot);
        let album = message.media_group_id().map(|album| album.0.clone());
        return (What::Media { caption, album }, named);
    }
    (What::Other, false)
}

/// The text without the bot's name in it, and whether it stood there.
fn without_name(text: &str, bot: Option<&str>) -> (String, bool) {
    let Some(bot) = bot else { return (text.trim().to_owned(), false) };
    let call = format!("@{}", bot.to_lowercase());
    let mut named = false;
    let mut kept = String::new();
    let mut rest = text;
    // Lower case may change a letter's length: the name itself is plain letters, so it is looked for as written.
    while let Some(at) = rest.find('@') {
        let (head, tail) = rest.split_at(at);
        kept.push_str(head);
        let here = tail.get(..call.len()).is_some_and(|start| start.to_lowercase() == call);
        let ends = tail
            .get(call.len()..)
            .is_some_and(|after| !after.starts_with(|letter: char| letter.is_ascii_alphanumeric() || letter == '_'));
        let taken = if here && ends { call.len() } else { 1 };
        if here && ends {
            named = true;
        } else {
            kept.push('@');
        }
        rest = tail.get(taken..).unwrap_or_default();
    }
    kept.push_str(rest);
    (kept.trim_matches([' ', ',', ':', '\n']).to_owned(), named)
}

fn of_button(number: u32, query: CallbackQuery) -> Arrival {
    let mut arrival = of_user(number, &query.from);
    if let Some(message) = &query.message {
        arrival.chat = message.chat().id.0;
        arrival.group = !message.chat().is_private();
        arrival.message = message.id().0;
    }
    arrival.addressed = true;
    arrival.what = What::Pressed { query: query.id.0, token: query.data.unwrap_or_default() };
    arrival
}

fn of_member(number: u32, member: &ChatMemberUpdated) -> Arrival {
    if !member.chat.is_private() {
        return nothing(number);
    }
    let what = if member.new_chat_member.is_present() { What::CameBack } else { What::Left };
    Arrival { chat: member.chat.id.0, at: member.date, what, ..of_user(number, &member.from) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::{Value, json};

    fn read(kind: &str, value: Value) -> Arrival {
        // From text, as it comes: the platform's types do not read from a value.
        let text = json!({"update_id": 17, kind: value}).to_string();
        arrival(serde_json::from_str(&text).unwrap(), Some("roof_bot"))
    }

    fn message(extra: Value) -> Value {
        let mut message = json!({
            "message_id": 3, "date": 1_779_071_400, "chat": {"id": 5, "type": "private", "first_name": "Meera"},
            "from": {"id": 5, "is_bot": false, "first_name": "Meera", "last_name": "K", "language_code": "hi"},
        });
        message.as_object_mut().unwrap().extend(extra.as_object().unwrap().clone());
        message
    }

    #[test]
    fn a_private_text() {
        let got = read("message", message(json!({"text": " how much water "})));
        assert_eq!((got.number, got.chat, got.from, got.message), (17, 5, 5, 3));
        assert_eq!((got.name.as_str(), got.language.as_deref()), ("Meera K", Some("hi")));
        assert!(got.addressed && !got.group && !got.edited);
        assert_eq!(got.what, What::Text("how much water".into()));
        assert_eq!(got.at.to_rfc3339(), "2026-05-18T02:30:00+00:00");
        assert!(read("edited_message", message(json!({"text": "x", "edit_date": 1_779_071_500}))).edited);
    }

    #[test]
    fn a_group_must_call_by_name() {
        let group = json!({"id": -9, "type": "group", "title": "Roofs"});
        let said = |text: &str| read("message", message(json!({"chat": group, "text": text})));
        assert!(!said("how much water").addressed);
        assert!(!said("@roof_bottle how much water").addressed);
        let got = said("@Roof_Bot, how much water for an amaranth box");
        assert!(got.addressed && got.group);
        assert_eq!(got.what, What::Text("how much water for an amaranth box".into()));
        let bot = json!({"id": 1, "is_bot": true, "first_name": "Roof", "username": "roof_bot"});
        let answered = json!({"message_id": 2, "date": 1, "chat": group, "from": bot, "text": "x"});
        let reply = read("message", message(json!({"chat": group, "text": "why", "reply_to_message": answered})));
        assert_eq!((reply.addressed, reply.reply_to), (true, Some(2)));
    }

    #[test]
    fn a_button_a_place_a_picture_a_farewell() {
        let from = json!({"id": 5, "is_bot": false, "first_name": "Meera"});
        let pressed = json!({"id": "q1", "from": from, "chat_instance": "c", "data": "abc"});
        let got = read("callback_query", pressed);
        assert_eq!(got.what, What::Pressed { query: "q1".into(), token: "abc".into() });
        assert_eq!(got.chat, 5);
        let place = read("message", message(json!({"location": {"latitude": 21.1, "longitude": 79.0}})));
        assert_eq!(place.what, What::Place { latitude_deg: 21.1, longitude_deg: 79.0 });
        let photo = json!([{"file_id": "a", "file_unique_id": "b", "width": 1, "height": 1, "file_size": 1}]);
        let picture = read("message", message(json!({"photo": photo, "caption": "spots"})));
        assert_eq!(picture.what, What::Media { caption: "spots".into(), album: None });
        let bot = json!({"id": 1, "is_bot": true, "first_name": "Roof"});
        let member = json!({"chat": {"id": 5, "type": "private", "first_name": "M"}, "from": from, "date": 1,
            "old_chat_member": {"user": bot, "status": "member"},
            "new_chat_member": {"user": bot, "status": "kicked", "until_date": 0}});
        assert_eq!(read("my_chat_member", member).what, What::Left);
        assert_eq!(read("something_new", json!({})).what, What::Other);
    }
}
