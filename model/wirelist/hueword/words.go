package hueword

import (
	"strings"
	"sync"

	"contralay/model/wirelist/signs"
)

// Coded is how many hues, the first of all, are those of a code of colours, and clear; Count is how many there are.
const (
	Coded = 15
	Count = 26
)

// Uncoded are the names of the hues that no code of colours has, from Coded on.
var Uncoded = [Count - Coded]string{"tan", "beige", "ivory", "cream", "natural", "olive", "khaki", "maroon", "lilac", "magenta", "mauve"}

// Of is the hue that one folded word names.
func Of(word string) (hue int, ok bool) {
	if base, ok := strings.CutSuffix(word, "色"); ok && base != "" {
		word = base
	}
	hue, ok = byWord()[word]
	return hue, ok
}

// byWord are the hues by these words. Nothing writes it.
var byWord = sync.OnceValue(func() map[string]int {
	all := map[string]int{}
	for hue, words := range All() {
		for _, w := range strings.Fields(words) {
			if _, twice := all[w]; !twice { // the first hue has it
				all[w] = hue
			}
		}
	}
	return all
})

// twice are hues that no code has with the hue that they are a shade of behind or before them: "olive green" is olive, and no stripe.
var twice = strings.NewReplacer(
	"olive green", "olive", "olive drab", "olive", "olivgrun", "oliv", "vert olive", "olive", "verde oliva", "oliva", "olijfgroen", "olijf",
	"khaki green", "khaki", "vert kaki", "kaki", "verde caqui", "kaki", "maroon red", "maroon", "rojo granate", "granate",
	"cream white", "cream", "creme weiss", "creme", "cremeweiss", "creme", "blanc creme", "creme",
	"natural white", "natural", "naturweiss", "natur", "ivory white", "ivory", "elfenbeinweiss", "elfenbein",
	"beige brown", "beige", "tan brown", "tan")

// Signs between two hues, and letters of which one is in all of the words above.
var betweenHues, beginTwice = signs.Of("/,;"), signs.Of("vkcmt")

// Once writes such a hue in a folded text as one word.
func Once(folded string) string {
	if len(folded) < len("tan brown") || betweenHues.In(folded) || !beginTwice.In(folded) {
		return folded
	}
	return twice.Replace(folded)
}

// All are the words of each hue that folded texts have for it in further languages: Polish, Dutch, Czech, Swedish, Danish and Norwegian,
// Portuguese, Finnish, Hungarian, Turkish, Romanian, Russian, Ukrainian, Croatian, Slovene, Greek, Japanese, Chinese, Korean; of hues that
// no code has, in all languages. From memory, no source. A shop says its own words in a recipe.
func All() [Count]string {
	return [Count]string{
		0: " 黒 黑 검정 흑 mauro μαυρο μαύρο чорний crna crn czarno черно czarny czarna zwart cerna cerny svart sort preto " +
			"preta musta fekete siyah negru neagra черный чёрный черн " +
			"czarne cerne cerno svarte sorte zwarte crni crno ",
		1: " 茶 棕 褐 갈 갈색 καφε καφέ коричневий smed smeda rjav rjava brazowo brazowy brazowa bruin hneda hnedy brunt " +
			"castanho castanha marrom ruskea barna kahverengi maro коричневый кор " +
			"brazowe braz hnede hnedo kahve cafe bruine rusk ruskeat smeđa smeđi smeđe smedi smede rjavi ",
		2: " 赤 红 紅 빨강 적 κόκκινο κοκκινο червоний crven crvena rdec rdeca czerwono красно czerwony czerwona rood cervena " +
			"cerveny ruda rudy rod rodt vermelho vermelha punainen piros voros kirmizi rosu rosie красный крас " +
			"czerwone cervene cerveno rott encarnado encarnada puna pun rode roda crveni crveno rdeci ",
		3: " 橙 주황 πορτοκαλι помаранчевий оранжевий narancast oranzen pomaranczowo pomaranczowy pomaranczowa oranje " +
			"oranzova oranzovy laranja oranssi narancs turuncu portocaliu оранжевый " +
			"pomaranczowe oranzove oranzovo narancssarga anaranjado anaranjada naranjo " +
			"oransje appelsin appelsinfarvet brandgul oranzowy oranzowa oranzowe narancasta narancasti oranzna oranzni arancia πορτοκαλί ",
		4: " 黄 黃 노랑 황 κιτρινο κίτρινο жовтий zut zuta rumen rumena zolto желто zolty zolta geel zluta zluty gul gult " +
			"amarelo amarela keltainen sarga sari galben желтый жёлтый " +
			"zolte zlute zluto kelta kelt keltanen gule gula gele zuti zuto rumeni ",
		5: " 緑 绿 綠 초록 녹 πρασινο πράσινο зелений zelen zielono зелено zielony zielona groen zelena zeleny gron gront gronn " +
			"vihrea zold yesil зеленый зелёный " +
			"zielone zelene zeleno gront viher vihr gronne grona groene zeleni ",
		6: " 青 蓝 藍 파랑 청 μπλε синій plav plava niebiesko сине niebieski niebieska blauw modra modry bla blatt sininen kek " +
			"mavi albastru albastra синий син " +
			"niebieskie modre modro sini blat blauwe plavi plavo moder modri ",
		7: " 紫 보라 μωβ фіолетовий ljubicast vijolicen fioletowo fioletowy fioletowa paars fialova fialovy lilla roxo " +
			"roxa violetti mor фиолетовый " +
			"fioletowe fialove fialovo fiolett violetta ibolya violetto violetta liila eflatun mov lilas purpura " +
			"paarse purpur purper purppura ljubicasta ljubicasti vijolicna vijolicni fiolet ",
		8: " 灰 회 회색 γκρι сірий siv siva szaro серо szary szara grijs seda sedy gra gratt cinza cinzento harmaa szurke " +
			"gri серый " +
			"szare sede sedo grat grijze sivi sivo ",
		9: " 白 흰 백 흰색 λευκο ασπρο білий bijel bijela bel bela bialo бело bialy biala wit bila bily vit vitt hvid hvit " +
			"branco branca valkoinen feher beyaz alb alba белый бел " +
			"biale bile bilo valko valk hvitt hvite hvidt hvide vita witte bijeli bijelo beli ",
		10: " 桃 粉 분홍 ροζ рожевий rozowy rozowa roze ruzova lyserod vaaleanpunainen розовый " +
			"rozowe rozowo ruzovy ruzove rozsaszin rozsaszinu roosa pinkki pembe roz rosado rosada roza ruzicasta ",
		11: " turkusowy turkusowa turkusowe tyrkysova tyrkysovy turkos turkoois turkoosi turkiz turkuaz turcoaz ",
		12: " gull guld goud zloty zlota altin kulta arany ",
		13: " srebrny srebrna zilver solv hopea ezust gumus stribrna stribrny ",
		14: " przezroczysty kleurloos " +
			"pruhledny pruhledna farblos farvelos seffaf attetszo kirkas ",
		15: " tan tn tostado ",
		16: " beige beis bej bezowy bezowa bezowe bezovy bezova beigefarben ",
		17: " ivory ivoire avorio marfil marfim ivoor elfenbein elfenben ",
		18: " cream creme crema kremowy kremowa kremowe ",
		19: " natural natur naturel naturelle naturale naturell naturfarben ",
		20: " olive oliv oliva olijf oliwkowy oliwkowa ",
		21: " khaki kaki ",
		22: " maroon granate ",
		23: " lilac ",
		24: " magenta ",
		25: " mauve malva ",
	}
}
