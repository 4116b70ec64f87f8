//! What people do in their chats.

use super::server::{BotApi, MORNING, Sent, user};
use serde_json::json;

impl BotApi {
    /// A person writes in their private chat; the message's number.
    pub fn says(&self, person: i64, text: &str) -> i64 {
        let (number, message) = self.message(person, person, &json!({"text": text}));
        self.update("message", &message);
        number
    }

    pub fn says_in(&self, group: i64, person: i64, text: &str) {
        let (_, message) = self.message(group, person, &json!({"text": text}));
        self.update("message", &message);
    }

    /// A person answers a message of the bot's.
    pub fn replies(&self, person: i64, to: &Sent, text: &str) {
        let bot = json!({"id": 1, "is_bot": true, "first_name": "Roof", "username": "roof_test_bot"});
        let answered = json!({"message_id": to.number, "date": MORNING, "from": bot, "text": to.text,
            "chat": {"id": person, "type": "private", "first_name": "x"}});
        let (_, message) = self.message(person, person, &json!({"text": text, "reply_to_message": answered}));
        self.update("message", &message);
    }

    pub fn edits(&self, person: i64, number: i64, text: &str) {
        let (_, mut message) = self.message(person, person, &json!({"text": text, "edit_date": MORNING + 60}));
        message["message_id"] = json!(number);
        self.update("edited_message", &message);
    }

    pub fn sends_place(&self, person: i64, latitude: f64, longitude: f64) {
        let place = json!({"location": {"latitude": latitude, "longitude": longitude}});
        let (_, message) = self.message(person, person, &place);
        self.update("message", &message);
    }

    pub fn sends_photo(&self, person: i64, caption: &str) -> i64 {
        let photo = json!([{"file_id": "a", "file_unique_id": "b", "width": 90, "height": 60, "file_size": 900}]);
        let (number, message) = self.message(person, person, &json!({"photo": photo, "caption": caption}));
        self.update("message", &message);
        number
    }

    /// Someone presses a button under a message.
    pub fn presses(&self, person: i64, under: &Sent, data: &str) {
        let id = {
            let mut state = self.state();
            let id = format!("query-{}", state.next_update);
            state.queries.insert(id.clone());
            id
        };
        let bot = json!({"id": 1, "is_bot": true, "first_name": "Roof", "username": "roof_test_bot"});
        let message = json!({"message_id": under.number, "date": MORNING, "from": bot, "text": under.text,
            "chat": {"id": person, "type": "private", "first_name": "x"}});
        let query = json!({"id": id, "from": user(person), "message": message, "chat_instance": "c", "data": data});
        self.update("callback_query", &query);
    }

    /// One photo of several sent together, in a chat, perhaps calling the bot by name.
    pub fn sends_album_photo(&self, chat: i64, person: i64, album: &str, caption: Option<&str>) -> i64 {
        let photo = json!([{"file_id": "a", "file_unique_id": "b", "width": 90, "height": 60, "file_size": 900}]);
        let mut more = json!({"photo": photo, "media_group_id": album});
        if let Some(caption) = caption {
            more["caption"] = json!(caption);
        }
        let (number, message) = self.message(chat, person, &more);
        self.update("message", &message);
        number
    }

    /// The caption of a photo is put right.
    pub fn edits_caption(&self, person: i64, number: i64, caption: &str) {
        let photo = json!([{"file_id": "a", "file_unique_id": "b", "width": 90, "height": 60, "file_size": 900}]);
        let more = json!({"photo": photo, "caption": caption, "edit_date": MORNING + 60});
        let (_, mut message) = self.message(person, person, &more);
        message["message_id"] = json!(number);
        self.update("edited_message", &message);
    }
}
