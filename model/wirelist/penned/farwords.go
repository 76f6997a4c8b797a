package penned

import (
	"strings"

	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// farWords are the words of each language that stand before the place that a wire goes to, or comes from, with its article. Common words,
// from memory, no source.
var farWords = map[string]string{
	"en": "to from at the",
	"de": "an am zu zum zur nach von vom aus auf den die das der ans",
	"fr": "a à au aux vers de du des depuis la le les l sur",
	"es": "a al hacia hasta de del desde para la el los las en",
	"it": "a al allo alla ai agli alle da dal dallo dalla dai dalle verso su sul sulla di del della il lo la l",
	"pt": "a ao à aos às para pra de do da dos das ate o os as no na em",
	"nl": "naar van op aan de het",
	"sv": "till fran till pa den",
	"da": "til fra pa den",
	"pl": "do z ze od na",
	"cs": "do k ke z ze od na",
	"ro": "la din de spre catre",
	"tr": "",
	"fi": "",
	"hu": "",
}

// goesWords are the words of each language that say that a wire goes somewhere or comes from there. Common words, from memory, no source.
var goesWords = map[string]string{
	"en": "goes runs comes leads connects", "de": "geht kommt fuhrt lauft", "fr": "va vient part arrive", "es": "va viene sale llega",
	"it": "va viene arriva parte", "pt": "vai vem sai chega liga", "nl": "gaat komt loopt", "sv": "gar kommer leder",
	"da": "gar kommer forer",
	"pl": "idzie biegnie", "cs": "jde vede", "ro": "merge vine pleaca",
}

// behindWord is the place that a text names behind such words of a language; ok is false where it begins with none.
func behindWord(text, lang string) (place string, ok bool) {
	far, goes := " "+farWords[lang]+" ", " "+goesWords[lang]+" "
	if len(far) == len("  ") {
		return "", false
	}
	w := strings.Fields(strings.ReplaceAll(text, "’", "'"))
	at := 0
	if at < len(w) && strings.Contains(goes, " "+table.Fold(w[at])+" ") {
		at++
	}
	from := at
	for at < len(w)-1 {
		word := strings.ToLower(w[at])
		if front, behind, cut := strings.Cut(word, "'"); cut && behind != "" && len(front) < 5 { // "all'alternatore"
			w[at] = w[at][len(front)+1:]
			return strings.Join(w[at:], " "), true
		}
		if !strings.Contains(far, " "+word+" ") && !strings.Contains(far, " "+table.Fold(word)+" ") ||
			w[at] == strings.ToUpper(w[at]) && len(w[at]) > 1 ||
			at > from+1 {
			break
		}
		at++
	}
	if at == from {
		return "", false
	}
	return strings.Join(w[at:], " "), true
}

// behindSee is the end that a text sends to, "see X2:5"; ok is false where it is anything else.
func behindSee(text string) (end string, ok bool) {
	w := strings.Fields(text)
	if len(w) != 2 || !runline.IsPlainEnd(w[1]) && !strings.ContainsAny(w[1], "/:-") {
		return "", false
	}
	switch strings.TrimRight(table.Fold(w[0]), ".:") {
	case "see", "siehe", "s", "voir", "v", "cf", "vedi", "vd", "ver", "vease", "vide", "zie", "se", "jfr", "zob", "patrz",
		"viz", "katso", "ks", "lasd", "bkz",
		"vezi", "same as", "=", "as":
		return w[1], true
	}
	return "", false
}

// isOnTheWay reports whether a text says what a wire passes on its way, and is no name of it: "behind the 15 A fuse".
func isOnTheWay(text string) bool {
	first, _, _ := strings.Cut(text, " ")
	switch table.Fold(first) {
	case "after", "behind", "before", "via", "through", "past", "hinter", "uber", "durch", "apres", "avant", "derriere",
		"dopo", "prima", "dietro",
		"attraverso", "tras", "despues", "detras", "antes", "depois", "atras", "na", "achter", "voor", "efter", "fore", "genom",
		"bag", "gjennom",
		"po", "przed", "przez", "za", "pred", "pres", "dupa", "inainte":
		return text != first
	}
	return false
}

// tellsBoth reports whether the place that such a line names is two: "the box to the lamp".
func tellsBoth(place string) bool {
	for _, w := range []string{" to ", " nach ", " zu ", " zum ", " zur ", " vers ", " hacia ", " hasta ", " verso ", " naar ",
		" till ", " til ", " para "} {
		if strings.Contains(place, w) {
			return true
		}
	}
	return false
}
