package strokes

import (
	"strings"
	"unicode"

	"contralay/model/wirelist/columned"
	"contralay/model/wirelist/pinword"
)

// heads is what stands above a run: the names of its two parts.
type heads struct {
	near, far string
	at, line  int   // the first line of it, and that of the headings
	texts     []Row // what is drawn there
	signalAt  int   // 1 or 2 where only the near or the far side has a heading for the signals, else 0
}

// columnWords are words that say what a column of such lines holds, and name no part. Common words, from memory, no source.
var columnWords = wordSet(`pin pins pin# pin-no pinno no nr num number # signal signals name names function meaning description desc
	direction dir use remark note line wire colour color
	stift kontakt nummer funktion bezeichnung bedeutung farbe ader leitung
	broche signification fonction nom couleur
	señal senal nombre patilla funcion función color
	segnale nome piedino funzione colore
	signaal naam functie kleur betekenis
	signaali nimi sygnał nazwa sinal nome função pino`)

// signalWords are those of them that say that a column names signals.
var signalWords = wordSet(`signal signals name names function funktion fonction nom nombre señal función segnale nome funzione signaal
	naam functie signaali nimi sygnał nazwa sinal bezeichnung`)

func wordSet(text string) map[string]bool {
	all := map[string]bool{}
	for _, w := range strings.Fields(text) {
		all[w] = true
	}
	return all
}

// headsOf finds the lines above a run that name the parts its strokes lead to, each above its pins; done are the lines above that are
// another run's.
//
//	Computer          Modem
//	DB9F              DB25M
//	2  -------------  3
func headsOf(lines []string, done, first int, wires []wire) (h heads) {
	const most, mostEmpty = 12, 1 // lines that are looked at, empty ones that follow each other (no source)
	h.at, h.line = first, first
	guide := wires[0]
	for _, w := range wires {
		if w.to-w.from > guide.to-guide.from && w.near.pin != "" {
			guide = w
		}
	}
	var found [][2]string
	var signals [2]bool
	empty, from := 0, first
	var texts []Row
	for n := first - 1; n >= max(done, first-most) && len(found) < 4; n-- {
		text := plain(lines[n])
		if text == "" {
			if empty++; empty > mostEmpty {
				break
			}
			continue
		}
		empty = 0
		if len(found) == 0 && (isDrawing(text) || strings.Contains(text, "--") && isSketched(text)) {
			texts = append([]Row{textRow(n, text)}, texts...)
			continue
		}
		names, said, ok := namesOf(text, guide)
		if !ok {
			break
		}
		signals[0], signals[1] = signals[0] || said[0], signals[1] || said[1]
		found, from = append([][2]string{names}, found...), n
		if h.line == first {
			h.line = n
		}
	}
	if len(found) == 0 {
		for len(texts) > 0 && !texts[0].Drawn {
			texts = texts[1:]
		}
		if len(texts) > 0 {
			h.at, h.texts = texts[0].At, texts
		}
		return h
	}
	h.at, h.texts = from, texts
	switch signals {
	case [2]bool{true, false}:
		h.signalAt = 1
	case [2]bool{false, true}:
		h.signalAt = 2
	}
	for _, f := range found {
		h.near, h.far = strings.TrimSpace(h.near+" "+f[0]), strings.TrimSpace(h.far+" "+f[1])
	}
	if len(found) > 1 { // "Signal Computer" above "RxD  2", and another line below
		h.near, h.far = withoutColumnWord(h.near), withoutColumnWord(h.far)
	}
	if h.near == h.far && h.near != "" {
		h.near, h.far = h.near+" (left)", h.far+" (right)"
	}
	return h
}

// namesOf are the names that a line of headings has on both sides of the strokes; ok is false where it is no such line.
func namesOf(text string, guide wire) (names [2]string, signals [2]bool, ok bool) {
	pieces := columned.Gapped(text)
	mid := (guide.from + guide.to) / 2
	sides, best := [2]int{}, [2]int{-1, -1}
	for _, p := range pieces {
		if runes(p.Text) > 30 || strings.ContainsAny(p.Text[len(p.Text)-1:], ".,!?") || strings.Contains(p.Text, "--") || !hasWord(p.Text) {
			return names, signals, false
		}
		side, pin := 0, guide.near.at
		if (p.From+p.To)/2 > mid {
			side, pin = 1, guide.far.at
		}
		sides[side]++
		for _, w := range strings.Fields(strings.ToLower(p.Text)) {
			signals[side] = signals[side] || signalWords[w]
		}
		if IsColumnWords(p.Text) {
			continue
		}
		away := max(p.From-pin, pin-p.To+1, 0)
		if best[side] < 0 || away < best[side] {
			best[side], names[side] = away, withoutLastPinWord(strings.TrimRight(p.Text, ": "))
		}
	}
	return names, signals, len(pieces) > 1 && sides[0] > 0 && sides[1] > 0
}

// hasWord reports whether a text has a letter.
func hasWord(text string) bool { return strings.IndexFunc(text, unicode.IsLetter) >= 0 }

// isSketched reports whether a line joins a pin to nothing that is read: "RTS 7 ---+".
func isSketched(text string) bool {
	return strings.ContainsAny(text, `+|\/`) && strings.ContainsAny(text, "0123456789")
}

// withoutLastPinWord takes a word for pins off the end of a name, "MCU pin".
func withoutLastPinWord(name string) string {
	at := strings.LastIndexByte(name, ' ')
	if at > 0 && (pinword.Is(strings.ToLower(name[at+1:])) || IsColumnWords(name[at+1:])) {
		return name[:at]
	}
	return name
}

// IsColumnWords reports whether a text is words for columns alone.
func IsColumnWords(text string) bool {
	for _, w := range strings.Fields(strings.ToLower(text)) {
		if !columnWords[w] && !columnWords[strings.Trim(w, "#.:()")] {
			return false
		}
	}
	return true
}

// withoutColumnWord takes a word for a column off the front of a name.
func withoutColumnWord(name string) string {
	if first, rest, ok := strings.Cut(name, " "); ok && IsColumnWords(first) {
		return rest
	}
	return name
}
