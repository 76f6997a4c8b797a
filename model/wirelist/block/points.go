package block

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// points is how many rows from one on are a list of cavities, a point each; 0 where they are none.
//
//	## Pins
//	* 1 Rudder motor +
//	* 3 - Rudder sense
//	* 4 -
//
// Points are prose more often: the cavities must count up from the first without a gap and half of the names be of
// nets, or a heading must say that pins follow. Each name is short and no sentence.
func (f *finder) points(i int) int {
	rows := f.t.Rows
	if !f.isPoint(rows, i) || i > 0 && f.isPoint(rows, i-1) && rows[i-1].Indent == rows[i].Indent {
		return 0
	}
	n := 1
	for i+n < len(rows) && f.isPoint(rows, i+n) && rows[i+n].Indent == rows[i].Indent && rows[i+n].Line <= rows[i+n-1].Line+2 {
		n++
	}
	if n < 2 {
		return 0
	}
	seen := map[string]bool{}
	rises, last, nets, said, valued := true, 0, 0, 0, 0
	for _, r := range rows[i : i+n] {
		pin, text, ok := partPoint(r.Cells[0])
		if !ok || seen[pin] || !isShortName(partValues(text).name) {
			return 0
		}
		if saysPin(r.Cells[0]) {
			said++
		}
		if v := partValues(text); v.some() {
			valued++
		}
		if isNetLike(text) {
			nets++
		}
		seen[pin] = true
		at := ordinal(pin)
		rises = rises && (at == last+1 || last == 0 && at == 0 || at == last+2 && isLeftOut(pin))
		last = at
	}
	if said == n {
		return n
	}
	dotted := rows[i].Point || rows[i].Indent > 1 || 2*valued >= n || !f.t.Marked || f.t.Text
	if rises && (n > 2 || valued == n) && dotted && 2*nets >= n || f.saysPins(i) {
		return n
	}
	return 0
}

// isPoint reports whether a row is a point of a list, or a line of text alone that begins with a
// number and a full stop or a bracket.
func (f *finder) isPoint(rows []table.Row, i int) bool {
	r := rows[i]
	if len(r.Cells) != 1 || f.t.Marked && !r.Prose || r.Level > 0 {
		return false
	}
	_, _, ok := partPoint(r.Cells[0])
	return ok && (r.Point || !f.t.Marked || f.t.Text || strings.IndexAny(r.Cells[0], ".)") > 0)
}

// partPoint parts "3 - Horn", "3: Horn", "3. Horn", "Pin 3 Horn" and "3 Horn" into the cavity and its name.
func partPoint(text string) (pin, rest string, ok bool) {
	text = strings.TrimSpace(text)
	text = strings.TrimSpace(text[pinWord(text):])
	end := strings.IndexAny(text, " :=.)-–\t")
	if end < 0 {
		return text, "", name.IsCavity(text) && strings.ContainsAny(text, "0123456789")
	}
	pin, rest = text[:end], text[end:]
	if !name.IsCavity(pin) {
		return "", "", false
	}
	signs := strings.TrimLeft(rest, " \t")
	rest = strings.TrimSpace(strings.TrimLeft(signs, ":=.)-–→>"))
	switch {
	case strings.HasPrefix(rest, "x ") || strings.HasPrefix(rest, "× "): // 2 x M4 screws
		return "", "", false
	case signs != "" && strings.ContainsAny(signs[:1], ".-") && len(rest) > 0 && len(signs) > 1 && value.IsDigit(signs[1]): // 3-4 m, 2.5 mm
		return "", "", false
	}
	return pin, rest, true
}

// pinWord is how long the word for a cavity at the head of a line is, its blank with it; 0 where there is none.
func pinWord(text string) int {
	for _, word := range []string{"pin ", "cavity ", "way ", "kontakt ", "broche ", "pole ", "contact ", "terminal ", "stift ", "pino ",
		"borne ", "klemme "} {
		if len(text) > len(word) && strings.EqualFold(text[:len(word)], word) {
			return len(word)
		}
	}
	return 0
}

// saysPin reports whether a line begins with the word for a cavity, and one that a sign or a digit tells from a word of a
// sentence: "Pin 3", "Pin A:".
func saysPin(text string) bool {
	n := pinWord(text)
	if n == 0 {
		return false
	}
	pin, _, _ := partPoint(text)
	after := strings.TrimSpace(text[n:])
	after = strings.TrimSpace(after[min(len(pin), len(after)):])
	return after == "" || strings.ContainsAny(pin, "0123456789") || strings.ContainsAny(after[:1], ":=.)-") ||
		strings.HasPrefix(after, "–")
}

// isLeftOut reports whether a cavity stands behind a letter that is left out of its row, as it looks like a digit: I, O, Q.
func isLeftOut(pin string) bool { return len(pin) == 1 && strings.Contains("JPRjpr", pin) }

// isNetLike reports whether a text has a word that names of nets have and things to do have not: a voltage, a ground, a
// colour, a state.
func isNetLike(text string) bool {
	if name.StateOf(text) != name.Used || text == "" || strings.HasSuffix(text, "+") || strings.HasSuffix(text, "-") {
		return true
	}
	for _, w := range name.Words(table.Fold(text)) {
		switch w {
		case "v", "gnd", "ground", "supply", "feed", "signal", "data", "sense", "sensor", "can", "tx", "rx", "shield", "output",
			"input", "vcc",
			"return", "common", "lamp", "motor", "masse", "coil", "relay", "channel", "power", "earth":
			return true
		}
		if volts := strings.TrimSuffix(w, "v"); volts != w && volts != "" && strings.Trim(volts, "0123456789") == "" {
			return true
		}
		if _, ok := value.ParseColour(w, ""); ok && len(w) > 2 {
			return true
		}
	}
	return false
}

// isShortName reports whether a text is a name: a few words and no sentence.
func isShortName(text string) bool {
	return len(text) <= mostHead && !strings.HasSuffix(text, ".") && len(strings.Fields(text)) <= 6
}

// ordinal is the place of a cavity in its row, 1 for "1" and "A"; 0 for any other.
func ordinal(pin string) int {
	if n, err := strconv.Atoi(pin); err == nil {
		return n
	}
	if len(pin) == 1 && value.IsLetter(pin[0]) {
		return int(pin[0]|0x20-'a') + 1
	}
	return 0
}

// saysPins reports whether the heading or the line above a row says that pins follow.
func (f *finder) saysPins(i int) bool {
	above := slices.Clone(f.path)
	if i > 0 {
		above = append(above, f.t.Rows[i-1])
	}
	if len(above) == 0 {
		return false
	}
	for _, r := range above[max(0, len(above)-2):] {
		_, text := r.Filled()
		for _, w := range name.Words(table.Fold(text)) {
			switch w {
			case "pin", "pins", "pinout", "pinouts", "cavities", "connector", "plug", "stecker", "pinbelegung", "belegung", "broches",
				"pines":
				return true
			}
		}
	}
	return false
}

// list makes the block of a list of points; what follows belongs to another.
func (f *finder) list(points []table.Row) {
	b := Block{Table: f.t, Path: slices.Clone(f.path), Titles: f.titles(), Listed: true}
	wide := 0
	for _, r := range points {
		pin, text, _ := partPoint(r.Cells[0])
		parts := strings.Split(strings.ReplaceAll(text, " – ", " - "), " - ")
		if wide == 0 {
			wide = len(parts)
		}
		if len(parts) != wide {
			wide = 1
		}
		r.Cells, r.Prose = append([]string{pin}, parts...), false
		b.Rows = append(b.Rows, r)
	}
	if wide == 1 { // no dash of its own parts all of them: each is one name, and its values
		b.valued(points)
	}
	f.close()
	f.all = append(f.all, b)
}

// valued gives the points of a list their cells: the cavity, its name, and the values behind it where some of them have any.
//
//   - Pin 1: pump + (red, 16 AWG)
//   - Pin 2: pump -, black, 16 AWG
//   - Pin 3: nothing
func (b *Block) valued(points []table.Row) {
	some, wide := false, 0
	all := make([]values, len(points))
	for i, r := range points {
		_, text, _ := partPoint(r.Cells[0])
		all[i] = partValues(text)
		some, wide = some || all[i].some(), max(wide, len(all[i].rest))
	}
	for i, r := range points {
		pin, text, _ := partPoint(r.Cells[0])
		b.Rows[i].Cells = []string{pin, text}
		if some {
			v := all[i]
			b.Rows[i].Cells = append([]string{pin, v.name, v.colour, v.size}, v.rest...)
		}
	}
	if some {
		b.Form = "points of a list"
		b.Fields = []name.Field{name.FieldPin, name.FieldSignal, name.FieldColour, name.FieldGauge}
		for range wide {
			b.Fields = append(b.Fields, name.FieldKeep)
		}
	}
}
