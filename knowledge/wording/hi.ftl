# What rooftend says, in Hindi. The keys are those of the English file.
# A bed, a crop or a material stands before a colon or a comma: its name may be English and takes no ending.

## Small pieces

day = { $weekday } { $date } { $month }
day-either-way = { $day } के आसपास, एक दिन आगे-पीछे
day-span = { $day } के आसपास ({ $low } से { $high } के बीच)
span = { $low } से { $high }
and-last = { $all } और { $last }
weekday-0 = सोम
weekday-1 = मंगल
weekday-2 = बुध
weekday-3 = गुरु
weekday-4 = शुक्र
weekday-5 = शनि
weekday-6 = रवि
month-1 = जनवरी
month-2 = फ़रवरी
month-3 = मार्च
month-4 = अप्रैल
month-5 = मई
month-6 = जून
month-7 = जुलाई
month-8 = अगस्त
month-9 = सितंबर
month-10 = अक्टूबर
month-11 = नवंबर
month-12 = दिसंबर
unit-L = { $n } लीटर
unit-ml = { $n } मिली
unit-kg = { $n } किलो
unit-g = { $n } ग्राम
unit-mm = { $n } मिमी
unit-m = { $n } मीटर
unit-m2 = { $n } वर्ग मीटर
unit-ft = { $n } फुट
unit-in = { $n } इंच
unit-cm = { $n } सेमी
unit-ft2 = { $n } वर्ग फुट
unit-percent = { $n } %
unit-celsius = { $n } °C
unit-ml-per-l = हर लीटर में { $n } मिली
unit-g-per-l = हर लीटर में { $n } ग्राम
unit-kn-m2 = { $n } kN/m²
bed-described =
    { $kind ->
        [tray] { $size } की ट्रे
        [pot] { $size } का गमला
        [basket] { $size } की टोकरी
        [bag] { $size } का बैग
       *[box] { $size } का डिब्बा
    }

## Water

water-past-heat =
    { $crop }: यह गर्मी बर्दाश्त से ज़्यादा है। दिन में { $tmax }, और { $limit } से ऊपर { $beyond ->
        [bolts] फूल की डंडी निकल आती है
        [turns-bitter] कड़वाहट आ जाती है
        [drops-flowers] फूल झड़ जाते हैं
        [scorches] पौधा झुलस जाता है
       *[stops] बढ़त रुक जाती है
    }। पानी से पौधा बच जाएगा, पर पनपेगा नहीं।
water-past-cold = { $crop }: यह ठंड बर्दाश्त से ज़्यादा है। रात में { $tmin }, और { $limit } से नीचे पौधे को नुक़सान होता है। अभी पानी कम लगता है।
water-rhythm =
    { $rhythm ->
        [none] { $bed }: इस हफ़्ते पानी न दें, जितना सूखेगा बारिश उससे ज़्यादा देगी।
        [weekly] { $bed }: इस हफ़्ते एक बार क़रीब { $turn } पानी दें (कुल { $week })।
        [third] { $bed }: हर तीसरे दिन सुबह क़रीब { $turn } पानी दें (हफ़्ते में कुल { $week })।
        [second] { $bed }: एक दिन छोड़कर सुबह क़रीब { $turn } पानी दें (हफ़्ते में कुल { $week })।
        [daily] { $bed }: रोज़ सुबह क़रीब { $turn } पानी दें (हफ़्ते में कुल { $week })।
        [twice] { $bed }: रोज़ सुबह क़रीब { $turn } और शाम को क़रीब { $turn } पानी दें (हफ़्ते में कुल { $week })।
       *[thrice] { $bed }: रोज़ तीन बार क़रीब { $turn } पानी दें: तड़के, दोपहर को छाँव में, शाम को (हफ़्ते में कुल { $week })।
    }
water-more-beds = और { $count } बेड बाक़ी; किसी का नाम लेकर पूछें।
water-all-beds = सब बेड मिलाकर रोज़ { $day }।
water-reason =
    रोज़ { $loss } पानी सूखता है{ $air ->
        [dry] : दिन में { $tmax } और हवा सूखी है।
        [wet] ; इस हफ़्ते { $rain } बारिश का अंदाज़ा है।
       *[plain] : दिन में { $tmax } तक गर्मी है।
    }
water-check =
    { $hot ->
        [hot] पहले पाइप का गरम पानी निकाल दें; उँगली के एक पोर नीचे मिट्टी अब भी नम हो तो इस बार रहने दें।
       *[mild] उँगली के एक पोर नीचे मिट्टी अब भी नम हो तो इस बार रहने दें।
    }
assumed-bed = आपके बेड की जानकारी नहीं है, इसलिए यह माना: { $bed }, 6 घंटे धूप। अपना बताएँ तो हिसाब बेहतर होगा।
assumed-sun = सीधी धूप { $hours } घंटे मानी है; कम या ज़्यादा हो तो बताएँ।
assumed-usual-days = आपकी छत के आने वाले दिनों का मौसम नहीं मिला; { $place } के इस मौसम के आम दिन माने हैं, इसलिए हिसाब मोटा है।
ask-which-bed = किस बेड के बारे में?
ask-what-bed = कौन सी फ़सल है, और बेड कितना बड़ा है? जैसे: 12 इंच के गमले में टमाटर।
ask-which-place = आप किस शहर में हैं? हिसाब के लिए वहाँ का मौसम चाहिए।
choice-bed = { $bed }
choice-place = { $place }
choice-size = { $size }
choice-article = { $title }
choice-water = टमाटर के बैग में कितना पानी दें?
choice-harvest = सरसों वाली ट्रे कब कटेगी?
choice-person = किसी इंसान से बात कराइए

## Why: water

working-bed = हिसाब, { $bed }:
working-forecast = मौसम: { $day } का पूर्वानुमान, एक-एक दिन का।
working-forecast-undated = मौसम: पूर्वानुमान की फ़ाइल, एक-एक दिन का; उसमें नहीं लिखा कि कब बनी।
working-usual-days = मौसम: 7 में से { $days } दिन { $place } के आम दिन माने ({ $period }, { $distance } किमी दूर); असली दिन इनसे अलग होते हैं।
working-no-weather = मौसम: कुछ पता नहीं।
working-reference = खुले में घास से उड़ने वाला पानी (reference ET): रोज़ { $et } ({ $source }, Penman-Monteith)।
working-procedure =
    नापा नहीं गया: { $what ->
        [sunshine] सूरज की ऊर्जा, धूप के घंटों से निकाली
        [solar] सूरज की ऊर्जा, दिन-रात के तापमान के फ़र्क़ से निकाली
        [dew-point] हवा की नमी, रात के सबसे कम तापमान से निकाली
        [humidity-mean] हवा में भाप का दबाव, औसत नमी से निकाला
        [wind] हवा, 2 मीटर प्रति सेकंड मानी
       *[sunless] बिना धूप वाले दिन के बादल, अंदाज़े से माने
    } ({ $source })।
working-light = सीधी धूप { $hours } घंटे{ $shade ->
        [open] {""}
       *[net] , और { $net } धूप रोकने वाली जाली
    }: बेड का अपना हिसाब रोज़ { $et } (सीधी किरण eq. 28 से; बिखरी रोशनी Erbs, Klein और Duffie 1982 से)।
working-coefficients = फ़सल का गुणांक: पत्ते { $basal } + खुली गीली सतह { $evaporation }, ज़्यादा से ज़्यादा { $highest } (fao56: eq. 70 से 76; छत पर पौधे कम हों तो 5 % ज़्यादा, यह अपना अंदाज़ा है)।
working-loss = सूखते किनारों समेत: रोज़ { $loss }, { $area } पर = रोज़ { $day }; हफ़्ते की बारिश { $rain }।
working-surface = ऊपर की परत: खुले हिस्से से रोज़ { $bare } सूखता है (fao56: eq. 77) और { $limit } के बाद ऊपर सूखा दिखता है (आम चलन, कोई स्रोत नहीं)।
working-roots = जड़ें { $limit } तक ले सकती हैं, उसके बाद पानी कम पड़ता है (fao56: eq. 83, मिट्टी में आसानी से मिलने वाले पानी से)। जो पहले आए वही तय करता है: { $decides ->
        [surface] ऊपर की परत।
       *[roots] जड़ें।
    }
working-rhythm =
    यानी हफ़्ते में { $often } बार पानी; तय हुआ: { $rhythm ->
        [none] पानी नहीं
        [weekly] हफ़्ते में एक बार
        [third] हर तीसरे दिन
        [second] एक दिन छोड़कर
        [daily] रोज़ एक बार
        [twice] रोज़ दो बार
       *[thrice] रोज़ तीन बार
    }।
working-doubt =
    अंदाज़ा है कि दस में से नौ बार सही मात्रा इसी बीच होगी; सबसे बड़ा शक यह कि { $doubt ->
        [sun-spell] बेड पर धूप किस समय आती है
        [weather] मौसम कैसा रहेगा
        [small-stand] गरम छत पर छोटे बेड से कितना ज़्यादा सूखता है
        [sides] किनारे कितनी जल्दी सूखते हैं
        [leaves] पत्तों से कितना पानी उड़ता है
        [wind] हवा कितनी है, जो पता नहीं
        [humidity] नमी कितनी है, जो पता नहीं
        [rain] बारिश कितनी होगी
        [surface-limit] ऊपर की परत कब सूखी दिखती है
       *[root-limit] मिट्टी कितना पानी देती है
    }।

## Harvest

harvest-first =
    { $when ->
        [now] { $crop } ({ $bed }): { $day } से तुड़ाई का समय चल रहा है, आज ही देख लें।
        [past] { $crop } ({ $bed }): तैयार होने का दिन { $day } था और तुड़ाई का समय निकल चुका है; आज देख लें, ख़त्म हो तो हटा दें।
       *[ahead] { $way ->
            [tray] { $crop }, { $bed }: कटाई { $day }।
           *[bed] { $crop }, { $bed }: पहली तुड़ाई { $day }।
        }
    }
harvest-reason = दिन { $tmax } और रात { $tmin } के हिसाब से गिना: कुल क़रीब { $days } दिन।
harvest-other-start = एक ही तारीख़ पता है, इसलिए पौध कितने दिन की थी यह अंदाज़ा है; तारीख़ से ज़्यादा आँख पर भरोसा करें।
harvest-signs = { $signs }
harvest-expected = उम्मीद: कुल { $grams }।
harvest-say-when =
    { $how ->
        [planted] { $crop }: पौध कब लगाई थी? बताएँ तो दिन निकल आएगा।
       *[sown] { $crop }: बीज कब बोए थे? बताएँ तो दिन निकल आएगा।
    }
ask-what-grows = { $bed }: इसमें क्या लगा है, और कब से?
ask-which-crop = कौन सी फ़सल, और कब बोई थी?
working-thermal-time =
    { $crop }, { $how ->
        [planted] पौध लगी { $day }
       *[sown] बीज बोए { $day }
    }: { $base } से ऊपर { $sum } डिग्री-दिन चाहिए, { $upper } से ऊपर कुछ नहीं जुड़ता ({ $source })।
working-harvest-days = गिने दिनों में से { $days } दिन { $place } के आम दिन हैं, पूर्वानुमान नहीं।
working-claim = अंदाज़ा है कि दस में से नौ बार सही दिन इसी बीच होगा: बीज और दिन एक से नहीं होते।
working-yield = उपज: { $area } में { $grams } ({ $source })।

## Mix and build

mix-recipe = { $mix }, नापकर (तौलकर नहीं): { $parts }। साइज़ बताएँ तो लीटर में हिसाब मिल जाएगा।
mix-litres =
    { $count ->
        [1] { $bed }: ढीली मिट्टी { $litres } लगेगी; बैठकर { $settled } रह जाएगी।
       *[other] { $bed }, { $count } नग: कुल ढीली मिट्टी { $litres } लगेगी; बैठकर { $settled } रह जाएगी।
    }
mix-parts = { $parts }।
mix-part = { $material } { $amount }
mix-share = { $material } { $percent }
mix-addition = हर लीटर में { $material } { $grams } ग्राम
build-parts = { $bed }: पानी निकलने वाली ट्रे { $trays } ({ $tray } की), किनारे की पट्टी { $sides } ({ $height } ऊँची), अस्तर का कपड़ा { $cloth }, तार { $wire }।
assumed-depth = गहराई नहीं बताई, इसलिए { $depth } मानी है।
assumed-tray = ट्रे { $tray } की मानी है; आपकी दूसरे साइज़ की हो तो बताएँ।
ask-size = डिब्बा कितना बड़ा है? लंबाई, चौड़ाई और गहराई बताएँ।
working-mix = बैठने के बाद { $settled }, ऊपर { $rim } ख़ाली छोड़कर; ढीली मिट्टी बैठकर { $settling } घटती है, इसलिए { $loose }।
working-recipe = { $mix }: { $parts }।
working-trays = सब ट्रे एक ही रुख़ में, किनारे से किनारा फँसाकर: लंबाई में { $along }, चौड़ाई में { $across }; दोनों रुख़ में से वह जिसमें कम लगें।
working-parts = किनारे की पट्टी एक बार चारों ओर; कपड़ा तले और किनारों पर एक ही टुकड़े में, ऊपर से 10 सेमी बाहर; चारों कोनों पर हर 15 सेमी ऊँचाई पर 40 सेमी तार का बंधन (आम चलन, कोई स्रोत नहीं)।

## Care, hand-over, none

article = { $answer }
working-article = इस लेख से: { $title }।
which-article = इनमें से किसके बारे में?
handed-over-person = टीम को बता दिया है: कोई आपको यहीं जवाब देगा।
handed-over-kind =
    { $kind ->
        [sow] कब क्या बोएँ, इसका
        [shade] जाली और छाँव का
        [spray] स्प्रे का
        [feed] खाद का
        [load] छत पर वज़न का
        [space] पौधों की दूरी का
        [seed] बीज की मात्रा का
        [trouble] पौधे को क्या हुआ, इसका
        [due] कौन सा काम कब करना है, इसका
       *[other] इसका
    } हिसाब अभी मुझसे नहीं होता, इसलिए आपका सवाल टीम को भेज दिया है।
handed-over-unknown = इसका ठीक जवाब मेरे पास नहीं है। टीम को भेज दिया है: कोई आपको यहीं जवाब देगा।
declined = इसमें मुझसे मदद नहीं हो पाएगी। मुझे आपकी छत के बेड, पानी, बुवाई और तुड़ाई की जानकारी है।
not-understood = समझ नहीं आया। ऐसे पूछकर देखें:

## Records

recorded-job =
    लिख लिया: { $job ->
        [water] पानी दिया
        [spray] स्प्रे किया
        [feed] खाद दी
        [flush] सादे पानी से धोया
        [thin] घने पौधे निकाले
        [prune] काट-छाँट की
        [stake] सहारा लगाया
        [pick] तुड़ाई की
        [pull] पौधे उखाड़े
        [net] जाली
        [mix] नई मिट्टी
        [top-up] ऊपर से मिट्टी भरी
        [clear] ख़ाली किया
        [mend] मरम्मत की
       *[check] देख लिया
    }{ $amount ->
        [none] {""}
       *[other] , { $amount }
    }, { $beds }, { $day }।
recorded-sown =
    लिख लिया: { $crop }, { $how ->
        [planted] पौध लगाई
       *[sown] बीज बोए
    }, { $beds }, { $day }।
recorded-seen =
    लिख लिया, { $beds }, { $day }: { $what ->
        [still-wet] अब भी गीला
        [dry-early] समय से पहले सूखा
       *[ran-through] पानी सीधा नीचे निकल गया
    }।
record-stranger = आपसे अभी पहचान नहीं है, इसलिए आपका काम यहाँ नहीं लिखा जा सकता। टीम से कहें कि आपको जोड़ दें।
record-future = { $day } अभी आया नहीं। काम किस दिन हुआ?
record-not-yours = { $bed }: इसका काम आपके नाम से नहीं लिखा जा सकता।
record-no-bed = यहाँ अभी आपका कोई बेड नहीं है। बात टीम को भेज दी है।
record-unknown = समझ नहीं आया कि क्या काम हुआ, इसलिए कुछ नहीं लिखा; बात टीम को भेज दी है।
record-which-crop = कौन सी फ़सल थी?
record-not-kept = यह लिखा नहीं जा सका, कहीं दर्ज नहीं हुआ। दोबारा भेजें।

## Cautions

caution = सावधानी: { $text }
caution-text = { $text }
caution-weight = पूरा भीगने पर वज़न { $weight } तक हो सकता है, पौधे और लोग अलग। बनाने से पहले ऐसे स्ट्रक्चरल इंजीनियर से पूछें जिसने यह छत देखी हो; छत झेल लेगी, यह यहाँ से नहीं कहा जा सकता।
caution-load = छत या बालकनी वज़न झेल लेगी, यह यहाँ से नहीं कहा जा सकता। ऐसे स्ट्रक्चरल इंजीनियर से पूछें जिसने स्लैब देखा हो; तब तक भारी चीज़ें किनारे से दूर रखें।
caution-spray = मात्रा और तोड़ने से पहले रुकने के दिन लेबल से लें; धूप या हवा में नहीं, दस्ताने और मास्क पहनकर।

## Front

demo-greeting = यह नागपुर का बनावटी बाग़ीचा है; ग्राहक और मौसम भी बनावटी हैं। तीन चीज़ें पूछकर देखें:
demo-note = (डेमो: बनावटी बाग़ीचा, बनावटी मौसम; यहाँ जो लिखा जाए वह बाद में मिटा दिया जाता है)

## Sow

season-day = { $date } { $month }
sow-fits =
    { $fits ->
        [yes] { $when ->
            [day] { $crop }: हाँ, { $day } ठीक है। { $way ->
                [seedbed] नर्सरी में बीज क़रीब { $until } तक; पौध 25 से 35 दिन बाद बाहर लगेगी।
                [planted] पौध क़रीब { $until } तक लगाएँ।
                [tray] ट्रे में क़रीब { $until } तक।
               *[bed] क़रीब { $until } तक बो सकते हैं।
            }
           *[today] { $crop }: हाँ, अभी। { $way ->
                [seedbed] नर्सरी में बीज क़रीब { $until } तक; पौध 25 से 35 दिन बाद बाहर लगेगी।
                [planted] पौध क़रीब { $until } तक लगाएँ।
                [tray] ट्रे में क़रीब { $until } तक।
               *[bed] क़रीब { $until } तक बो सकते हैं।
            }
        }
        [year] { $crop }: हाँ, अभी; यहाँ { $way ->
            [tray] ट्रे में पूरे साल
           *[bed] पूरे साल
        } लग सकता है।
        [soon] { $crop }: अभी नहीं। { $way ->
            [seedbed] नर्सरी में बीज क़रीब { $from } से ({ $until } तक); पौध 25 से 35 दिन बाद बाहर लगेगी।
            [planted] पौध क़रीब { $from } से लगाएँ ({ $until } तक)।
            [tray] ट्रे में क़रीब { $from } से ({ $until } तक)।
           *[bed] क़रीब { $from } से बोएँ ({ $until } तक)।
        }
        [late] { $crop }: समय अभी-अभी निकल गया। { $way ->
            [seedbed] अगली बार नर्सरी में बीज क़रीब { $from } से { $until } तक; पौध 25 से 35 दिन बाद बाहर लगेगी।
            [planted] अगली बार पौध क़रीब { $from } से { $until } तक लगाएँ।
            [tray] अगली बार ट्रे में क़रीब { $from } से { $until } तक।
           *[bed] अगली बार क़रीब { $from } से { $until } तक बोएँ।
        }
       *[no] { $when ->
            [day] { $crop }: { $day } इसका समय नहीं है।
           *[today] { $crop }: अभी नहीं।
        } { $way ->
            [seedbed] नर्सरी में बीज क़रीब { $from } से { $until } तक; पौध 25 से 35 दिन बाद बाहर लगेगी।
            [planted] पौध क़रीब { $from } से { $until } तक लगाएँ।
            [tray] ट्रे में क़रीब { $from } से { $until } तक।
           *[bed] क़रीब { $from } से { $until } तक बोएँ।
        }
    }
sow-main = लंबा मौसम: क़रीब { $from } से { $until } तक।
sow-marginal = मुश्किल से: { $crop } तब भी अपनी हद पर रहेगा। सुबह की धूप, दोपहर को जाली, और कम उम्र में ही तोड़ लें।
sow-never = { $crop }: यहाँ खुले में साल के किसी समय फ़सल तक नहीं पहुँचता।
sow-hot =
    { $when ->
        [later] ठीक से तुड़ाई होने से पहले, क़रीब { $on } से, दिन { $tmax } के हो जाएँगे; { $limit } से ऊपर { $beyond ->
            [bolts] फूल की डंडी निकल आती है
            [turns-bitter] कड़वाहट आ जाती है
            [drops-flowers] फूल झड़ जाते हैं
            [scorches] पौधा झुलस जाता है
           *[stops] बढ़त रुक जाती है
        }।
       *[now] गर्मी ज़्यादा है: दिन में { $tmax }, और { $limit } से ऊपर { $beyond ->
            [bolts] फूल की डंडी निकल आती है
            [turns-bitter] कड़वाहट आ जाती है
            [drops-flowers] फूल झड़ जाते हैं
            [scorches] पौधा झुलस जाता है
           *[stops] बढ़त रुक जाती है
        }।
    }
sow-cold =
    { $when ->
        [later] क़रीब { $on } से रात { $tmin } की होगी; { $limit } से नीचे नुक़सान होता है।
       *[now] ठंड ज़्यादा है: रात में { $tmin }, और { $limit } से नीचे नुक़सान होता है।
    }
sow-long-day = क़रीब { $on } से दिन { $limit } घंटे से लंबा हो जाता है, तब फूल की डंडी निकल आती है।
sow-seed-hot = बीज के लिए गर्मी ज़्यादा है: दिन-रात का औसत { $mean }, और { $limit } से ऊपर नहीं उगता।
sow-seed-cold = बीज के लिए ठंड ज़्यादा है: दिन-रात का औसत { $mean }, और { $limit } से नीचे नहीं उगता।
sow-slow = ठंड इतनी है कि समय पर फ़सल नहीं मिलेगी।
sow-shows = नमी बनी रहे तो बीज { $days } दिन में उगेगा।
sow-shows-on =
    { $when ->
        [past] { $crop }, { $sown } को बोया: अब तक ({ $day }) उग जाना था। मिट्टी हटाकर बीज देखें; गल गया हो तो दोबारा बोएँ।
       *[ahead] { $crop }, { $sown } को बोया: { $day } उगना चाहिए; ऊपर की मिट्टी नम रखें।
    }
sow-pick =
    { $end ->
        [none] पहली तुड़ाई क़रीब { $day }।
        [tray] कटाई क़रीब { $day }।
        [cold] पहली तुड़ाई क़रीब { $day }; क़रीब { $on } से रातें इसके लिए ठंडी होंगी, तब तक समेट लें।
        [drops-flowers] पहली तुड़ाई क़रीब { $day }; क़रीब { $on } से गर्मी में फूल झड़ेंगे।
        [stops] पहली तुड़ाई क़रीब { $day }; क़रीब { $on } से गर्मी में बढ़त रुकेगी।
        [scorches] पहली तुड़ाई क़रीब { $day }; क़रीब { $on } से गर्मी में झुलसेगा, पहले ही तोड़ लें।
        [turns-bitter] पहली तुड़ाई क़रीब { $day }; क़रीब { $on } से कड़वाहट आएगी, पहले ही पूरा काट लें।
       *[bolts] पहली तुड़ाई क़रीब { $day }; क़रीब { $on } से फूल की डंडी निकलेगी: दिखते ही पूरा काट लें।
    }
sow-reckoned-for = हिसाब { $place } का है; आप कहीं और हैं तो बताएँ।
sow-backwards = { $day } को पौध लगानी हो तो नर्सरी में बीज { $from } से { $until } के बीच डालें।
sow-succession = अभी एक ट्रे में क़रीब { $days } दिन लगते हैं: { $trays } ट्रे हों तो हर { $every } दिन पर एक बोएँ, और हर { $every } दिन पर एक कटेगी।
sow-shallow = पर { $bed } सिर्फ़ { $depth } गहरा है; { $crop }: { $needs } चाहिए।
sow-dark = पर { $bed } में सीधी धूप क़रीब { $hours } घंटे है; { $crop }: { $needs } घंटे चाहिए।
sow-saplings = { $bed }: { $plants } पौधे आएँगे; { $raised } पौध तैयार करें, कुछ ख़राब होती हैं।
sow-unknown-crop = “{ $crop }” कब बोएँ, इसकी जाँची हुई जानकारी मेरे पास नहीं है, और अंदाज़ा ठीक नहीं। टीम को भेज दिया है: कोई आपको यहीं जवाब देगा।
sow-no-usual-days = आपकी जगह का आम मौसम मेरे पास नहीं है, इसलिए कब क्या बोएँ यह नहीं बता सकते। टीम को भेज दिया है।
sow-now =
    { $place ->
        [follows] { $when ->
            [day] { $bed }, { $crop } के बाद, { $day } को: { $crops }।
           *[today] { $bed }, { $crop } के बाद, अभी: { $crops }।
        }
        [bed] { $when ->
            [day] { $bed }, { $day } को: { $crops }।
           *[today] { $bed }, अभी: { $crops }।
        }
       *[roof] { $when ->
            [day] { $day } के आस-पास यह लग सकता है: { $crops }।
           *[today] अभी यह लग सकता है: { $crops }।
        }
    }
sow-now-trays = अंकुर ट्रे में, छाँव में: { $crops }।
sow-nothing =
    { $place ->
        [roof] तब के लिए ठीक बैठने वाली कोई फ़सल मेरे पास नहीं: फ़सल से पहले गर्मी या ठंड आ जाएगी।
       *[bed] { $bed }: तब के लिए ठीक बैठने वाली कोई फ़सल मेरे पास नहीं; फ़सल से पहले गर्मी या ठंड आ जाएगी।
    }
sow-item =
    { $ends ->
        [year] { $crop } (पूरे साल)
       *[day] { $way ->
            [seedbed] { $crop } नर्सरी में (क़रीब { $until } तक)
           *[bed] { $crop } (क़रीब { $until } तक)
        }
    }
sow-waits = इनके लिए रुकें: { $crops }।
sow-waiting = { $crop } क़रीब { $from } से
sow-other-family = सब दूसरे कुल की हैं, ताकि पिछली फ़सल के कीड़े और रोग आगे न चलें।
working-sow-limits = { $crop }: हफ़्ते का औसत दिन में { $hot } से ऊपर हो तो ज़्यादा गर्म ({ $hot_source }), रात में { $cold } से नीचे हो तो ज़्यादा ठंडा ({ $cold_source })।
working-sow-young = छोटे पौधे { $more } °C ज़्यादा सह लेते हैं, फूल या डंडी आने से पहले (अपना अंदाज़ा)।
working-sow-seed = बीज { $base } से { $ceiling } के बीच उगता है, हफ़्ते भर का दिन-रात का औसत ({ $source })।
working-sow-day-length = दिन { $hours } घंटे से लंबा हो तो फूल की डंडी निकलती है ({ $source }; दिन की लंबाई fao56: eq. 34 से)।
working-sow-growth =
    { $way ->
        [tray] कटाई तक { $sum } डिग्री-दिन चाहिए ({ $source }), 30 दिन के अंदर।
        [seedbed] पौध लगने से पहली तुड़ाई तक { $sum } डिग्री-दिन चाहिए ({ $source }), उससे पहले नर्सरी में 25 से 35 दिन (आम चलन, कोई स्रोत नहीं); फिर तुड़ाई भर खड़ा रहे, कम से कम दो हफ़्ते।
       *[bed] पहली तुड़ाई तक { $sum } डिग्री-दिन चाहिए ({ $source }); फिर तुड़ाई भर खड़ा रहे, कम से कम दो हफ़्ते।
    }
working-sow-window = इसलिए { $from } से { $until } तक लग सकता है। अंदाज़ा है कि दस में से नौ बार सही दिन इसी बीच होंगे: हद और हफ़्ते 1.5 °C इधर-उधर करके देखे।
working-sow-walls = दीवारों से बची सीधी धूप, { $bed }, जनवरी से दिसंबर तक घंटे हर दिन: { $hours } (सूरज की जगह Meeus से; दीवार अंतहीन मानी)।
working-sow-list = हर फ़सल को साल भर के हिसाब से देखा, जैसे एक फ़सल के सवाल में; जिसकी हद सबसे दूर है वह पहले।
working-season-days =
    { $forecast ->
        [yes] हफ़्ते: जहाँ तक पूर्वानुमान है वहाँ तक वही, फिर { $place } के आम दिन ({ $period }, { $distance } किमी दूर)।
       *[no] हफ़्ते: { $place } के आम दिन ({ $period }, { $distance } किमी दूर)।
    }
caution-work-heat = { $tmax } में छत पर काम सुबह-सुबह या सूरज ढलते ही करें, पानी पीते रहें; चक्कर आए तो तुरंत रुक जाएँ।

# (end of: Sow)

## Shade

shade-net =
    { $when ->
        [keep] { $crop }: { $hangs } वाली जाली { $ends ->
            [year] पूरे साल
           *[day] क़रीब { $until } तक
        } लगी रहने दें; इसके लिए { $percent } ठीक है।
        [now] { $optional ->
            [yes] { $crop }: अभी हल्की जाली, { $percent } तक, क़रीब { $until } तक अच्छी रहेगी; बिना जाली भी चल जाएगा।
           *[no] { $crop }: हाँ, अभी { $percent } वाली जाली लगाएँ, { $ends ->
                [year] और पूरे साल रखें।
               *[day] क़रीब { $until } तक।
            }
        }
       *[later] { $crop }: अभी जाली नहीं। { $percent } वाली जाली क़रीब { $from } से { $until } तक।
    } { $when ->
        [later] जिस हफ़्ते दिन { $above } से ऊपर हों, तब चाहिए।
       *[now] दिन { $tmax } के हैं, और { $above } से ऊपर चाहिए।
    }
shade-none = { $crop }: जाली की ज़रूरत नहीं। यहाँ साल का कोई हफ़्ता दिन में { $above } से ऊपर नहीं जाता।
shade-offered =
    { $verdict ->
        [dark] { $percent }: ज़्यादा अँधेरा{ $known ->
            [yes] {""} (रोशनी बची { $left }, कम से कम { $least } mol हर दिन चाहिए)।
           *[no] ।
        }
        [thin] { $percent }: इस गर्मी के लिए कम रोकती है।
       *[suits] { $percent }: ठीक{ $known ->
            [yes] {""} (रोशनी बची { $left }, कम से कम { $least } mol हर दिन चाहिए)।
           *[no] ।
        }
    }
shade-dark-bed = { $hours } घंटे धूप में बेड वैसे ही { $crop } की हद तक छाँव में है: वहाँ घनी जाली नहीं।
shade-past-limit =
    जाली पत्ते पर छाँव करती है, हवा ठंडी नहीं करती: { $tmax } में तब भी { $beyond ->
        [bolts] फूल की डंडी निकल आती है
        [turns-bitter] कड़वाहट आ जाती है
        [drops-flowers] फूल झड़ जाते हैं
        [scorches] पौधा झुलस जाता है
       *[stops] बढ़त रुक जाती है
    }।
shade-water = जाली के नीचे क़रीब { $less } % कम पानी सूखता है; उँगली से देखकर दें।
shade-how = हरी से सफ़ेद जाली बेहतर; पत्तों से एक हाथ ऊपर, किनारे खुले ताकि हवा चले।
shade-more-beds = और { $count } बाक़ी; किसी का नाम लेकर पूछें।
shade-ask-crop = जाली किस फ़सल के लिए?
shade-tray = अंकुर ट्रे: अंकुर खड़े होने तक अँधेरे में ढकें, फिर खुली छाँव या सुबह की 3 से 4 घंटे धूप। दोपहर की धूप हो तो 50 % वाली जाली लगाएँ, या छाँव में रखें।
choice-crop = { $crop }
working-shade-weeks =
    { $from ->
        [crop] { $crop }: जिस हफ़्ते का औसत दिन में { $above } से ऊपर हो, जाली चाहिए ({ $source }); जिस हफ़्ते से तय हुआ उसमें { $tmax }।
       *[limit] { $crop }: अपना आँकड़ा नहीं; गर्मी की हद से 2 °C पहले ({ $source }), यानी { $above } से जाली मानी; जिस हफ़्ते से तय हुआ उसमें { $tmax }।
    }
working-shade-window = जाली { $from } से { $until } तक; दोनों सिरे हफ़्ते 1.5 °C इधर-उधर करके निकाले, यह अपना अंदाज़ा है।
working-shade-cut = जाली रोशनी का { $cut } प्रतिशत रोके ({ $source })।
working-shade-light = बेड पर रोशनी, { $hours } घंटे धूप में: हर दिन हर वर्गमीटर { $light } mol (विकिरण × 0.45 × 4.57 mol/MJ, mccree-1972; बेड तक कितना, यह fao56: eq. 28 और Erbs, Klein और Duffie 1982 से)।
working-shade-least = कम से कम { $least } चाहिए ({ $source }), इसलिए जाली ज़्यादा से ज़्यादा { $densest } रोके।
working-shade-water = जाली के नीचे बेड का सूखना बिना जाली का { $share } है (जाली रोशनी और हवा रोकती है, हवा की गर्मी नहीं)।
working-shade-wind = बंद जाली पर हवा q = ½ρv² से दबाती है; खुली बुनाई पर कम।
working-shade-tray = ट्रे: आम चलन, कोई स्रोत नहीं।
caution-net-wind = आँधी से पहले जाली उतार लें: { $gust } किमी/घंटा का झोंका हर वर्गमीटर पर { $kilograms } किलो तक दबा सकता है। बाँधने के लिए किनारे से बाहर न झुकें।

# (end of: Shade)

## Spray

# (end of: Spray)

## Feed

# (end of: Feed)

## Load

# (end of: Load)

## Space and seed

# (end of: Space and seed)

## Water: away, salts, what was seen

# (end of: Water: away, salts, what was seen)
