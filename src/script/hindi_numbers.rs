//! The Hindi words for the whole numbers between the tens: each has a word of its own.

use rustc_hash::FxHashMap;
use std::sync::LazyLock;

/// Number, then its spellings: Devanagari in normal form (no nukta, one sign for a nasal vowel), then Latin letters.
const BETWEEN_TENS: [(f64, &[&str]); 67] = [
    (21.0, &["इक्कीस", "ikkis", "ikkees", "ikis", "ekkis", "ikkiss"]),
    (22.0, &["बाईस", "बाइस", "bais", "baais", "baees", "bayis", "baaees"]),
    (23.0, &["तेईस", "तेइस", "teis", "teyis", "teees", "taees"]),
    (24.0, &["चौबीस", "chaubis", "chaubees", "chobis", "choubis"]),
    (26.0, &["छब्बीस", "chhabbis", "chabbis", "chhabees", "chabis", "chhabbees"]),
    (27.0, &["सत्ताईस", "सत्ताइस", "sattais", "sattaees", "satais", "sataais", "sattaais"]),
    (28.0, &["अट्ठाईस", "अट्ठाइस", "अठ्ठाईस", "अठाईस", "atthais", "athais", "atthaees", "attais", "athaais"]),
    (29.0, &["उनतीस", "उन्तीस", "untis", "unatis", "unatees", "untees"]),
    (31.0, &["इकतीस", "इकत्तीस", "ikattis", "iktis", "ikatis", "ikattees", "ektis"]),
    (32.0, &["बत्तीस", "battis", "batis", "battees"]),
    (33.0, &["तैंतीस", "तेंतीस", "taintis", "tentis", "taintees", "tetis"]),
    (34.0, &["चौंतीस", "chauntis", "chautis", "chauntees", "chontis"]),
    (36.0, &["छत्तीस", "chhattis", "chattis", "chhatis", "chhattees"]),
    (37.0, &["सैंतीस", "saintis", "sentis", "saintees"]),
    (38.0, &["अडतीस", "adtis", "artis", "adatis", "adtees"]),
    (39.0, &["उनतालीस", "उन्तालीस", "untalis", "unatalis", "untaalis", "unchalis"]),
    (41.0, &["इकतालीस", "iktalis", "ektalis", "iktaalis"]),
    (42.0, &["बयालीस", "बियालीस", "bayalis", "byalis", "bayaalis", "bialis", "biyalis"]),
    (43.0, &["तैंतालीस", "तेंतालीस", "तिरालीस", "taintalis", "tentalis", "tetalis"]),
    (44.0, &["चवालीस", "चौवालीस", "चौंतालीस", "chavalis", "chawalis", "chauvalis", "chauwalis", "chavvalis"]),
    (46.0, &["छियालीस", "chhiyalis", "chiyalis", "chhialis"]),
    (47.0, &["सैंतालीस", "saintalis", "sentalis", "saintaalis"]),
    (48.0, &["अडतालीस", "adtalis", "artalis", "adtaalis"]),
    (49.0, &["उनचास", "उन्चास", "unchas", "unanchas", "unchaas"]),
    (51.0, &["इक्यावन", "इकावन", "ikyavan", "ikyawan", "ikavan", "ekyavan", "ikkyavan"]),
    (52.0, &["बावन", "bavan", "bawan", "baavan", "baawan"]),
    (53.0, &["तिरपन", "तिरेपन", "tirpan", "tirepan", "trepan"]),
    (54.0, &["चौवन", "चव्वन", "chauvan", "chauwan", "chavvan"]),
    (55.0, &["पचपन", "pachpan", "pachapan"]),
    (57.0, &["सत्तावन", "sattavan", "sattawan", "sattaavan", "sataavan", "satavan"]),
    (58.0, &["अट्ठावन", "अठावन", "अठ्ठावन", "atthavan", "athavan", "atthawan", "athawan", "atthaavan"]),
    (59.0, &["उनसठ", "unsath", "unasath"]),
    (61.0, &["इकसठ", "iksath", "eksath"]),
    (62.0, &["बासठ", "basath", "baasath"]),
    (63.0, &["तिरसठ", "तिरेसठ", "tirsath", "tiresath"]),
    (64.0, &["चौंसठ", "चौसठ", "chaunsath", "chausath"]),
    (65.0, &["पैंसठ", "painsath", "pensath"]),
    (66.0, &["छियासठ", "chhiyasath", "chiyasath"]),
    (67.0, &["सडसठ", "सरसठ", "sadsath", "sarsath"]),
    (68.0, &["अडसठ", "adsath", "arsath"]),
    (69.0, &["उनहत्तर", "उन्हत्तर", "unhattar", "unahattar"]),
    (71.0, &["इकहत्तर", "ikhattar", "ikahattar", "ekhattar"]),
    (72.0, &["बहत्तर", "bahattar", "bahatar"]),
    (73.0, &["तिहत्तर", "tihattar", "tihatar"]),
    (74.0, &["चौहत्तर", "chauhattar", "chohattar"]),
    (76.0, &["छिहत्तर", "chhihattar", "chihattar"]),
    (77.0, &["सतहत्तर", "सतत्तर", "satahattar", "sathattar", "satattar"]),
    (78.0, &["अठहत्तर", "athhattar", "athahattar"]),
    (79.0, &["उनासी", "उन्नासी", "उन्यासी", "unasi", "unnasi", "unyasi"]),
    (81.0, &["इक्यासी", "ikyasi", "ekyasi", "ikkyasi"]),
    (82.0, &["बयासी", "बियासी", "bayasi", "byasi", "biyasi"]),
    (83.0, &["तिरासी", "तेरासी", "tirasi", "terasi"]),
    (84.0, &["चौरासी", "chaurasi", "chourasi"]),
    (85.0, &["पचासी", "pachasi", "pachaasi"]),
    (86.0, &["छियासी", "chhiyasi", "chiyasi"]),
    (87.0, &["सत्तासी", "सतासी", "sattasi", "satasi"]),
    (88.0, &["अट्ठासी", "अठासी", "अठ्ठासी", "atthasi", "athasi"]),
    (89.0, &["नवासी", "navasi", "nawasi"]),
    (91.0, &["इक्यानवे", "इक्यानबे", "ikyanve", "ikyanave", "ikyanbe"]),
    (92.0, &["बानवे", "बानबे", "banve", "baanve"]),
    (93.0, &["तिरानवे", "तिरानबे", "tiranve", "tiranave"]),
    (94.0, &["चौरानवे", "चौरानबे", "chauranve", "chauranave"]),
    (95.0, &["पंचानवे", "पचानवे", "पंचानबे", "panchanve", "pachanve", "panchanave"]),
    (96.0, &["छियानवे", "छियानबे", "chhiyanve", "chiyanve", "chhiyanave"]),
    (97.0, &["सत्तानवे", "सत्तानबे", "सतानवे", "sattanve", "sattanave", "satanve"]),
    (98.0, &["अट्ठानवे", "अट्ठानबे", "अठानवे", "atthanve", "athanve", "atthanave"]),
    (99.0, &["निन्यानवे", "निन्यानबे", "निन्नानवे", "ninyanve", "ninyanave", "ninnanve"]),
];

/// The number that this word is, of those between the tens.
pub(super) fn between_tens(word: &str) -> Option<f64> {
    BY_SPELLING.get(word).copied()
}

/// Every word of a message is asked for here several times.
static BY_SPELLING: LazyLock<FxHashMap<&str, f64>> = LazyLock::new(|| {
    BETWEEN_TENS.iter().flat_map(|(value, spellings)| spellings.iter().map(|spelling| (*spelling, *value))).collect()
});
