package atplaces

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/strokes"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// place is what a heading says of the ends below it.
type place struct {
	name    string
	is      bool // it can be the heading of such a column
	leads   bool // it says that what stands below is where wires go
	ofPins  bool // a word for pins or for connections stands in it
	isThing bool // it is the name of a thing by its words
}

// mostHead is how long a heading is, in bytes (no source).
const mostHead = 56

// placeOf is the place that a heading names: without the words that say that ends stand below, and a remark in brackets; no name where it
// says what of a wire stands there, or where wires go.
func placeOf(h shape.Headings, head string) (p place) {
	if before, rest, ok := strings.Cut(head, " ("); ok && strings.HasSuffix(rest, ")") {
		head = before
	}
	if len(head) > mostHead || strings.ContainsAny(head, ":;=?,<>→") || !strings.ContainsFunc(head, isLetter) {
		return p
	}
	switch m, known := h.Words[strings.Join(name.Words(table.Fold(head)), " ")]; {
	case m.Field == name.FieldTo, name.IsDeviceWord(table.Fold(head)), words.GoesTo(table.Fold(head)):
		return place{is: true, leads: true}
	case m.Field == name.FieldPin, m.Field == name.FieldConnector:
		return place{is: true, ofPins: true}
	case known:
		return p
	}
	w := strings.Fields(head)
	for len(w) > 0 && (isOfPins(w[len(w)-1]) || isOff(w[len(w)-1])) {
		p.ofPins = p.ofPins || isOfPins(w[len(w)-1])
		w = w[:len(w)-1]
	}
	for len(w) > 0 && (isOfPins(w[0]) || isOff(w[0])) {
		p.ofPins = p.ofPins || isOfPins(w[0])
		w = w[1:]
	}
	p.name = strings.Join(w, " ")
	if name.IsGeneric(p.name) || p.name == "" || !placed(head) && isValueWord(h, w) {
		return place{}
	}
	p.is, p.isThing = true, words.IsThing(p.name) || endsWithUnit(w)
	return p
}

func isLetter(r rune) bool { return r > 127 || r|0x20 >= 'a' && r|0x20 <= 'z' }

// isValueWord reports whether one of the words of a heading says that something of the wire stands below it, or its other end.
func isValueWord(h shape.Headings, w []string) bool {
	for _, one := range w {
		folded := table.Fold(one)
		if words.GoesTo(folded) || words.IsOfValues(folded) || words.LeadsFar(folded) {
			return true
		}
		switch h.Words[folded].Field {
		case name.FieldColour, name.FieldGauge, name.FieldLength, name.FieldSignal, name.FieldWire, name.FieldTo, name.FieldFrom,
			name.FieldNote:
			return true
		}
	}
	return false
}

// endsWithUnit reports whether the last word is one for what has pins.
func endsWithUnit(w []string) bool {
	switch table.Fold(w[len(w)-1]) {
	case "board", "module", "card", "unit", "box", "plc", "ecu", "logger", "panel", "platine", "karte", "modul", "carte", "placa", "scheda",
		"kort", "plytka", "deska":
		return true
	}
	return false
}

// placed reports whether a heading says with a word that it is a place: "terminal at gauge", "gauge side".
func placed(head string) bool {
	for w := range strings.FieldsSeq(table.Fold(head)) {
		switch w {
		case "at", "side", "end", "am", "beim", "seite", "ende", "cote", "lato", "lado", "zijde", "kant", "sida", "strona":
			return true
		}
	}
	return false
}

// isOfPins reports whether a word says that pins or connections stand below.
func isOfPins(w string) bool {
	folded := strings.Trim(table.Fold(w), "#.:()")
	return name.IsPinWord(folded) || ofPins[folded]
}

// ofPins are words for connections. Common words, from memory, no source.
var ofPins = wordSet(`connection connections connected pinout wired wiring anschlusse anschluesse verdrahtung raccordement raccordements branchement
	connexion connexions conexion conexiones collegamento collegamenti conexao ligacao aansluitingen anslutning anslutningar polaczenie
	zapojeni tilslutning kytkenta`)

// isOff reports whether a word joins a word for pins with the place that it is at, or says nothing else than that a side is meant.
func isOff(w string) bool {
	folded := strings.Trim(table.Fold(w), "#.:()-/")
	return folded == "" || off[folded] || strokes.IsColumnWords(folded)
}

// off are such words. Common words, from memory, no source.
var off = wordSet(`at on of the in to side end am an im der die das des dem beim vom seite ende au a aux du de la le les l cote bout en el del
	lado extremo al alla sul della lato capo na no da do op aan het zijde kant vid pa i sida ved siden po u strona strana name number no nr`)

// wordSet is the set of the words of a text.
func wordSet(text string) map[string]bool {
	all := map[string]bool{}
	for w := range strings.FieldsSeq(text) {
		all[w] = true
	}
	return all
}
