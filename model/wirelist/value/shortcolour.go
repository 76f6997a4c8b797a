package value

import (
	"strings"
	"sync"

	"contralay/model/wirelist/hueword"
	"contralay/model/wirelist/table"
)

// FirstLetters reads a colour whose words are cut short, three letters or more of each, "czer/biał": every word of the language of
// the list that begins so is of one hue, else every word of any language. ok is false for all else; a word that is whole is taken as it is.
func FirstLetters(text, lang string) (c Colour, ok bool) {
	if IsChoice(text) {
		return nil, false // "or" is no orange
	}
	for _, t := range Scan(table.Fold(text)) {
		if strings.IndexByte("/-+.,", t.Kind) >= 0 {
			continue
		}
		hues, whole := wordColour(t.Text, lang)
		if hue := hueOfFirst(t.Text, lang); !whole && hue >= 0 {
			hues, whole = []int{hue}, true
		}
		if !whole || len(c)+len(hues) > MostHues {
			return nil, false
		}
		for _, h := range hues {
			if len(c) > 0 && c[len(c)-1].Of == h {
				return nil, false
			}
			c = append(c, Hue{Of: h})
		}
	}
	return c, len(c) > 0
}

// hueOfFirst is the one hue of all words that begin with some letters; −1 where there are none, or several.
func hueOfFirst(letters, lang string) int {
	const least = 3 // letters (no source)
	if len(letters) < least {
		return -1
	}
	own := strings.Fields(hueWordsOf(lang))
	if hue, ok := oneHue(letters, func(hue int) []string { return own[min(hue, len(own)):min(hue+1, len(own))] }); ok {
		return hue
	}
	all := hueWords()
	hue, _ := oneHue(letters, func(hue int) []string { return all[hue] })
	return hue
}

// oneHue finds the hue whose words begin with some letters; ok is false where none does, or several do.
func oneHue(letters string, words func(hue int) []string) (hue int, ok bool) {
	hue = -1
	for h := range hues {
		for _, w := range words(h) {
			if strings.HasPrefix(w, letters) {
				if hue >= 0 && hue != h {
					return -1, false
				}
				hue = h
			}
		}
	}
	return hue, hue >= 0
}

// hueWordsOf are the words of one language in the order of the hues, from black to pink; "" where nobody knows them. From memory,
// no source.
func hueWordsOf(lang string) string {
	switch lang {
	case "pl":
		return "czarny brazowy czerwony pomaranczowy zolty zielony niebieski fioletowy szary bialy rozowy"
	case "cs":
		return "cerny hnedy rudy oranzovy zluty zeleny modry fialovy sedy bily ruzovy"
	case "nl":
		return "zwart bruin rood oranje geel groen blauw paars grijs wit roze"
	case "sv":
		return "svart brun rod orange gul gron bla lila gra vit rosa"
	case "pt":
		return "preto castanho vermelho laranja amarelo verde azul roxo cinzento branco rosa"
	case "hu":
		return "fekete barna piros narancs sarga zold kek lila szurke feher rozsaszin"
	case "fi":
		return "musta ruskea punainen oranssi keltainen vihrea sininen violetti harmaa valkoinen vaaleanpunainen"
	case "fr":
		return "noir marron rouge orange jaune vert bleu violet gris blanc rose"
	case "es":
		return "negro marron rojo naranja amarillo verde azul violeta gris blanco rosa"
	case "it":
		return "nero marrone rosso arancio giallo verde blu viola grigio bianco rosa"
	case "de":
		return "schwarz braun rot orange gelb grun blau violett grau weiss rosa"
	}
	return ""
}

// hueWords are the words of every hue. Nothing writes them.
var hueWords = sync.OnceValue(func() (all [hueword.Coded][]string) {
	further := hueword.All()
	for hue, more := range [hueword.Coded]string{
		0: "black schwarz noir noire negro negra nero nera", 1: "brown braun brun brune marron marrone",
		2: "red rot rouge rojo roja rosso rossa", 3: "orange naranja arancione arancio",
		4: "yellow gelb jaune amarillo amarilla giallo gialla", 5: "green grun gruen vert verte verde", 6: "blue blau bleu bleue azul",
		7: "violet purple violett lila violeta morado viola", 8: "grey gray slate grau gris grigio grigia",
		9: "white weiss blanc blanche blanco blanca bianco bianca", 10: "pink rosa rose", 11: "turquoise turkis tuerkis turquesa turchese",
		12: "gold oro", 13: "silver silber argent plata argento", 14: "clear transparent",
	} {
		all[hue] = strings.Fields(further[hue] + " " + more)
	}
	return all
})
