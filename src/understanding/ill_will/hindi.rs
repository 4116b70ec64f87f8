//! Harm that is meant, in Hindi of either script: whom, with "ko", and a verb that is still to be done.

use super::{Said, Sounds};
use std::sync::LazyLock;

/// People and animals to whom harm may be meant.
const SOMEONE: &str = "kisi use usko usse pati patni biwi bivi saas sasur padosi padosan padosiyon boss malik aadmi aurat insaan \
    dushman bhai behan devar nanad bahu jethani logon mehmaan mehman makan-malik naukar naukrani chowkidar larke \
    ladke ladki bachche uncle aunty kutte kutton kutta kutiya billi billiyon bille gaay gay gai bakri bandar \
    bandaro bandaron langur kabutar kabutaro kabutaron kauwe kauve chidiya chidiyon gilahri pille jaanwar janwar \
    किसी उसे उसको पति पत्नी बीवी सास ससुर पड़ोसी पड़ोसन बॉस मालिक आदमी औरत इंसान दुश्मन भाई बहन देवर ननद बहू \
    लोगों मेहमान नौकर कुत्ते कुत्तों कुत्ता बिल्ली बिल्लियों गाय बकरी बंदर बंदरों लंगूर कबूतर कबूतरों कौए \
    चिड़िया चिड़ियों गिलहरी";

const KO: &str = "ko को ku";

/// Killing, still to be done.
const KILL: &str = "marna maarna marne maarne marni maaru maaroon maarun marwana maardu mardu maardun maardalu मारना मारने मारनी \
    मारूँ मारूं मारें मरवाना मारवाना नुकसान nuksan नुक़सान";

/// "Maar", before what is still to be done.
const STRIKE: &str = "maar mar मार";

/// Still to be done: shall I, to be, in order to.
const TO_DO: &str = "du dun doon dena dene deni dalu daalu daalun dalun dalna daalna dalne daalne daal karu karun karna karne \
    karni kar kru krna karoon दूँ दूं देना देने देनी डालूँ डालूं डालना डालने डाल करूँ करूं करना करने करनी कर दे \
    de करें kare";

/// What someone is to be.
const MADE: &str = "bimar beemar bimaar behosh pagal apahij khatam khatm बीमार बेहोश पागल अपाहिज ख़त्म खत्म";

const POISONS: &str = "zehar zeher zahar jahar jeher jehar zahr keetnashak kitnashak pesticide dhatura datura dhature kaner kaneer \
    arandi poison chuhemar ज़हर जहर कीटनाशक धतूरा धतूरे कनेर अरंडी पेस्टिसाइड bachhnag बछनाग oleander castor";

/// Giving it, still to be done.
const GIVE: &str = "dena dene deni du dun doon khilana khilane khilau khilaun khilaye pilana pilane pilau pilaun chatau milana \
    milane milau देना देने दूँ दूं खिलाना खिलाने खिलाऊँ खिलाऊं पिलाना पिलाऊँ पिलाने मिलाना मिलाऊँ";

/// Mixing it into food, still to be done.
const MIX: &str = "milana milane milani milau milaun mila milaye dalna daalna dalni dalne dalu daalu daalun daal dal dale daale \
    ghol मिलाना मिलाने मिलानी मिलाऊँ मिलाऊं मिला मिलाएँ डालना डालने डालूँ डालूं डाल डालें डालनी घोल";

const FOOD: &str = "khana khane khaane chai chay doodh dudh sabzi sabji roti sharbat mithai atta aate juice खाना खाने चाय दूध \
    सब्ज़ी सब्जी रोटी शरबत मिठाई आटे पानी pani paani";

/// Whose it is, before "ke", "ka", "ki", "wale".
const OTHERS: &str = "padosi padosan padosiyon kisi dusre doosre bagal uske unke uski unki dushman upar niche पड़ोसी पड़ोसन \
    पड़ोसियों किसी दूसरे बगल उसके उनके दुश्मन उसकी";

const PLANTED: &str = "paudhe paudha paudhon podhe plant plants gamle gamla bagiche bageeche bagicha ped garden bel gulab पौधे पौधा \
    पौधों गमले गमला बगीचे बगीचा पेड़ बेल गुलाब बाग़";

/// Spoiling plants, still to be done: whole, or with what follows.
const SPOIL: &str = "sukhau sukhana sukhane sukhaye sukhaun sukhaau jalau jalana jalane sadana sadau ujadna ujadu bigadna सुखाऊँ \
    सुखाऊं सुखाना सुखाने सुखाएँ जलाऊँ जलाना उजाड़ना उजाड़ूँ सड़ाना";
const SPOILT: &str =
    "sukha sookha kharab barbad barbaad nasht jala khatam khatm tabah सुखा ख़राब खराब बर्बाद नष्ट जला ख़त्म तबाह";

const NOT: &str = "nahi nahin nhi na bina mat नहीं न ना बिना मत bagair";

/// "Without being known", "quietly" deny nothing.
const UNKNOWN: &str = "pata bataye पता बताए jaane जाने shak शक";

/// Food to be given.
const FED: &str =
    "khilau khilaun khilana khilane khilaya pilau pilaun pilana pilane खिलाऊँ खिलाऊं खिलाना खिलाने पिलाऊँ पिलाना पिलाने";

/// What comes of it.
const ENDED: &str = "mar mare marega mari maut मर मरे मरेगा मौत";

const OWN_DEATH: &str = "khudkushi khudkhushi aatmahatya atmahatya ख़ुदकुशी खुदकुशी आत्महत्या suicide";

/// How the words of these lists sound.
static SOMEONE_SOUNDS: LazyLock<Sounds> = LazyLock::new(|| Sounds::of(SOMEONE));
static KILL_SOUNDS: LazyLock<Sounds> = LazyLock::new(|| Sounds::of(KILL));
static MADE_SOUNDS: LazyLock<Sounds> = LazyLock::new(|| Sounds::of(MADE));
static POISON_SOUNDS: LazyLock<Sounds> = LazyLock::new(|| Sounds::of(POISONS));
static OTHERS_SOUNDS: LazyLock<Sounds> = LazyLock::new(|| Sounds::of(OTHERS));
static OWN_DEATH_SOUNDS: LazyLock<Sounds> = LazyLock::new(|| Sounds::of(OWN_DEATH));

pub(super) fn to_oneself(said: &Said<'_>) -> bool {
    let own = said.any_phrase(&[
        "marna chahta",
        "marne ka mann",
        "marne ka man",
        "मरने का मन",
        "marna chahti",
        "mar jana chahta",
        "mar jana chahti",
        "mar jaana chahta",
        "mar jaana chahti",
        "jaan dena",
        "jaan dene",
        "jaan de du",
        "apni jaan",
        "jeena nahi",
        "jina nahi",
        "jeene ka mann nahi",
        "jine ka man nahi",
        "मरना चाहता",
        "मरना चाहती",
        "मर जाना चाहता",
        "मर जाना चाहती",
        "जान देना",
        "जान देने",
        "जान दे दूँ",
        "अपनी जान",
        "जीना नहीं",
        "जीने का मन नहीं",
        "khud ko khatam",
        "ख़ुद को ख़त्म",
        "खुद को खत्म",
        "khud ko marna",
        "खुद को मारना",
        "ख़ुद को मारना",
    ]);
    // "Apni jaan bachana": to save it.
    let saves = said.any(&["bachana", "bachane", "bachau", "बचाना", "बचाने", "बचाऊँ"]);
    (own || said.any_sound(&OWN_DEATH_SOUNDS)) && !saves
}

pub(super) fn to_others(said: &Said<'_>) -> bool {
    (0..said.words.len()).any(|at| someone_to_be_harmed(said, at) || their_plants(said, at))
        || poisons_food(said)
        || hidden(said)
}

/// "Chupke se dena hai, kaun se patte se aadmi mar jata hai": nobody is to know.
fn hidden(said: &Said<'_>) -> bool {
    const HIDDEN: [&str; 8] = ["chupke", "chupchap", "chupkese", "chori", "चुपके", "चुपचाप", "चोरी", "chup"];
    const ENDS: [&str; 12] =
        ["mar", "mare", "marega", "maut", "bimar", "behosh", "मर", "मरे", "मरेगा", "मौत", "बीमार", "बेहोश"];
    let someone = said.any_sound(&SOMEONE_SOUNDS);
    someone && said.any(&HIDDEN) && (said.any(&ENDS) || said.any_sound(&POISON_SOUNDS)) && said.any_of(GIVE)
}

/// "Kutte ko marne ke liye", "boss ko bimar karna hai", "billi ko zehar du".
fn someone_to_be_harmed(said: &Said<'_>, at: usize) -> bool {
    const FURTHEST: usize = 8;
    // What is put on them is care.
    const CARE: [&str; 14] = [
        "spray",
        "dawa",
        "dawai",
        "injection",
        "tika",
        "neem",
        "shampoo",
        "स्प्रे",
        "दवा",
        "दवाई",
        "इंजेक्शन",
        "नीम",
        "keede",
        "kide",
    ];
    let ko = [at + 1, at + 2].into_iter().find(|place| said.of(*place, KO));
    let own = said.is(at, &["use", "usko", "उसे", "उसको"]).then_some(at);
    let Some(ko) = ko.filter(|_| said.sounds(at, &SOMEONE_SOUNDS)).or(own) else { return false };
    let after: Vec<usize> = said.on(ko + 1, FURTHEST).collect();
    let last = |place: usize| {
        let denied = [place.checked_sub(1), Some(place + 1)]
            .into_iter()
            .flatten()
            .any(|at| said.of(at, NOT) && !(at + 1..at + 3).any(|next| said.of(next, UNKNOWN)));
        !denied
    };
    let care = |place: usize| place.checked_sub(1).is_some_and(|before| said.is(before, &CARE));
    let to_do = |place: usize| {
        said.of(place + 1, TO_DO)
            && !said.is(place + 2, &["diya", "di", "diye", "दिया", "dega", "degi", "देगा", "gaya", "liya"])
    };
    let killed = after.iter().any(|place| {
        let kill = said.sounds(*place, &KILL_SOUNDS) || said.of(*place, STRIKE) && to_do(*place);
        kill && last(*place) && !care(*place)
    });
    let made = after.iter().any(|place| said.sounds(*place, &MADE_SOUNDS) && to_do(*place) && last(*place));
    let poison = after.iter().find(|place| said.sounds(**place, &POISON_SOUNDS));
    let given = poison.is_some_and(|place| said.on(place + 1, 5).any(|next| said.of(next, GIVE) && last(next)));
    // "Saas ko kya khilau ki bimar pade", "dushman ko kaun sa beej khilau".
    let fed = after.iter().find(|place| said.of(**place, FED));
    let ends = |from: usize| said.on(from, 7).any(|at| said.of(at, ENDED) || said.sounds(at, &MADE_SOUNDS));
    let foe = said.of(at, "dushman दुश्मन");
    let ill_fed = fed.is_some_and(|place| last(*place) && (foe || ends(place + 1)));
    // "Maara ja sakta hai".
    let may_be = after.iter().any(|place| said.of(*place, "maara mara मारा") && said.of(place + 1, "ja jaa जा"));
    killed || made || given || ill_fed || may_be
}

/// "Kisi ke khane me dhatura milana", "kaner ka patta chai me daal du to kya hoga saas ko".
fn poisons_food(said: &Said<'_>) -> bool {
    const HAPPENED: [&str; 12] =
        ["diya", "liya", "gaya", "gayi", "दिया", "लिया", "गया", "गई", "khaya", "खाया", "kha", "खा"];
    let food = (0..said.words.len())
        .find(|at| said.of(*at, FOOD) && (at + 1..at + 3).any(|next| said.is(next, &["me", "mein", "m", "में"])));
    let Some(food) = food else { return false };
    let mixed = (food + 1..said.words.len()).any(|at| said.of(at, MIX));
    let whom = said.any_sound(&SOMEONE_SOUNDS);
    said.any_sound(&POISON_SOUNDS) && mixed && whom && !said.any(&HAPPENED)
}

/// "Padosi ke paudhe kaise sukhau", "पड़ोसी के पौधे चुपचाप कैसे मार दूँ".
fn their_plants(said: &Said<'_>, at: usize) -> bool {
    const OF: [&str; 12] = ["ke", "ka", "ki", "k", "wale", "wali", "के", "का", "की", "वाले", "वाली", "वालों"];
    let owned = said.is(at, &["uske", "unke", "uski", "unki", "उसके", "उनके", "उसकी"]);
    let theirs = said.sounds(at, &OTHERS_SOUNDS) && (owned || said.is(at + 1, &OF));
    if !theirs {
        return false;
    }
    let Some(plants) = said.on(at + 1, 5).find(|place| said.of(*place, PLANTED)) else { return false };
    let to_do = |place: usize| {
        said.of(place + 1, TO_DO) && !said.is(place + 2, &["diya", "di", "diye", "दिया", "dega", "degi", "देगा", "liya"])
    };
    said.on(plants + 1, 9).any(|place| {
        let denied = place > 0 && said.of(place - 1, NOT);
        let spoils = said.of(place, SPOIL)
            || (said.of(place, SPOILT) || said.of(place, STRIKE)) && to_do(place)
            || said.is(place, &["marna", "maarna", "मारना", "मारने", "marne"]);
        spoils && !denied
    })
}
