package pinlines

import (
	"regexp"
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/doingword"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// wide is what parts pieces beyond doubt: a wide gap, a tab, a bar, or a row of dots.
var wide = regexp.MustCompile(`[ \t]*(?:\.{2,}|…+|_{3,}|·{3,}|(?:\. ){3,}\.?)[ \t]*|[ \t]*\t[ \t]*|` +
	`[ \t]+(?:-{2,}|–{2,})(?:[ \t]+|$)| {2,}| \| `)

// narrow is what parts pieces where one of them is a value, and where dashes do so as well.
var narrow, dashed = regexp.MustCompile(`(?: ?, +|; +|: )`), regexp.MustCompile(`(?: ?, +|; +| [-–—] |: )`)

// dashes are those between two texts.
var dashes = regexp.MustCompile(` [-–—] `)

// reader is how the lines of a run are read.
type reader struct {
	lang  string           // whose short forms of colours count
	dash  bool             // dashes part pieces: where they do not, one behind a name is a pole
	key   huekey.ColourKey // what the list itself says of its short forms, nil for nothing
	loose bool             // letters beside a size are the short form of a colour, known or not
}

// piece is a part of a line.
type piece struct {
	text   string
	aside  bool // it stands in brackets
	joined bool // of such a piece: one blank stands between it and the text before
}

// line is what one line says of its cavities; "" where it does not say it.
type line struct {
	front
	row                  int // of its run
	signal, colour, size string
	to                   string
	bare                 bool // the size has no unit
	texts                []string
	notes                []string
	free                 bool
	points               string // the first sign of an arrow right behind the cavity: where the signal flows, where lines have both kinds
	behind               bool   // a text that is no name stands behind the values
	brace                string // what joins it to the line above or below
	braced               string // the text behind that
}

// lineOf reads a line in one way; ok is false where it says one thing twice, or does not begin with a cavity.
func lineOf(raw string, r reader) (l *line, ok bool) {
	f, ok := frontOf(raw)
	if !ok {
		return nil, false
	}
	l = &line{front: f}
	body := strings.TrimSpace(strings.TrimLeft(f.rest, " \t-–—:="))
	if strings.Trim(f.rest, "-–—:=. \t|") == "" || name.OnlyState(withoutBlanks(body)) && !l.hasValues(body, r) {
		l.free, l.signal = true, withoutBlanks(body)
		if l.signal == "" {
			l.signal = "-"
		}
		return l, true
	}
	if f.more && tight.MatchString(raw) {
		return l, false // a range, of which nobody knows what it says
	}
	if f.more {
		l.pins = f.pins[:1]
		f.rest = f.one
	}
	rest := strings.TrimLeft(f.rest, " \t")
	for _, sign := range []string{": ", "= ", "- ", "– ", "— ", ":\t", ".", "|"} {
		rest = strings.TrimLeft(strings.TrimPrefix(rest, sign), " \t")
	}
	if at := leads.FindString(rest); at != "" {
		l.points, rest = at[:1], rest[len(at):]
	}
	rest = l.cutBrace(strings.TrimRight(rest, " \t"))
	rest, ok = l.cutTo(rest)
	return l, ok && l.take(rest, r) && strings.TrimSpace(rest) != ""
}

// hasValues reports whether a line that says its cavity to be free has the colour or the size of a wire.
func (l *line) hasValues(body string, r reader) bool {
	for _, p := range cut(body, r) {
		if _, ok := valuesOf(p.text, r); ok {
			return true
		}
	}
	return false
}

// tight is a line that begins with a range beyond doubt.
var tight = regexp.MustCompile(`^[ \t]*(?:\pL+\.? )?#?[A-Z]{0,2}[0-9]{1,3}(?:-|–|\.\.\.?|…)[A-Z]{0,2}[0-9]{1,3}\b`)

// withoutBlanks makes one blank of several.
func withoutBlanks(s string) string { return strings.Join(strings.Fields(s), " ") }

// leads is an arrow right behind the cavity.
var leads = regexp.MustCompile(`^(?:<-+|-+>)[ \t]+`)

// back is an arrow that comes from where the wire goes, or one that has two heads.
var back = regexp.MustCompile(`(?:^|[ \t])(?:<-+|<=+|←)[ \t]`)

// cutTo cuts the arrow and the place where the wire goes off a line; ok is false where there are two arrows, or nothing before one.
func (l *line) cutTo(rest string) (string, bool) {
	from, to := arrow.In(rest)
	if strings.ContainsAny(rest, "<←") {
		if at := back.FindStringIndex(rest); to == 0 && at != nil {
			from, to = at[0], at[1]
		}
	}
	if to == 0 {
		return rest, true
	}
	behind := strings.TrimSpace(rest[to:])
	if _, again := arrow.In(behind); again > 0 || back.MatchString(behind) || strings.TrimSpace(rest[:from]) == "" || behind == "" {
		return rest, false
	}
	all := wide.Split(behind, -1)
	l.to, l.notes = endOf(all[0]), append(l.notes, all[1:]...)
	return strings.TrimRight(rest[:from], " \t,;"), true
}

// inBrackets is an end with its cavity in brackets, "main relay (85)".
var inBrackets = regexp.MustCompile(`^(.*\S) \(([A-Za-z]?[0-9]{1,3}[a-z]?|[A-Z]|[+-])\)$`)

// endOf writes an end with a colon before its cavity, where that stands in brackets.
func endOf(text string) string { return inBrackets.ReplaceAllString(text, "$1:$2") }

// take reads the pieces of a line; ok is false where two of them say one thing.
func (l *line) take(rest string, r reader) bool {
	needs := false            // a colour: a size stood behind a name with one blank
	last, far := false, false // whether the piece before is the name of the wire, or where it goes
	for _, p := range cut(rest, r) {
		v, ok := valuesOf(p.text, r)
		switch {
		case far && p.aside && p.joined && (name.IsCavity(p.text) || p.text == "+" || p.text == "-"):
			l.to += ":" + p.text
			continue
		case far && !ok && !p.aside && len(p.text) < 4:
			return false // a cavity of the place, or a pole
		}
		far = false
		if m := numbered.FindStringSubmatch(p.text); m != nil && l.colour == "" && isColour(m[1], r) {
			l.colour, last = m[1], false
			l.notes = append(l.notes, p.text)
			continue
		}
		switch {
		case p.aside && v.bare && v.colour == "" && l.size != "":
			l.notes, last = append(l.notes, "("+p.text+")"), false // the number of a core
		case ok && (v.colour != "" && l.colour != "" || v.size != "" && l.size != ""):
			return false
		case ok:
			l.colour += v.colour
			if v.size != "" {
				l.size, l.bare = v.size, v.bare
			}
			last = false
		case p.aside && p.joined && last && l.colour == "" && l.size == "":
			l.texts[len(l.texts)-1] += " (" + p.text + ")"
		case p.aside:
			if strings.Trim(p.text, "0123456789") == "" {
				p.text = "(" + p.text + ")"
			}
			l.notes = append(l.notes, p.text)
			last = false
		case l.colour+l.size != "" && isRemark(p.text):
			l.notes, last = append(l.notes, p.text), false
		default:
			if v, text := within(p.text, r); text != "" && l.colour == "" && l.size == "" {
				if strings.HasSuffix(strings.ToLower(text), " light") {
					return false // a lamp, or the shade of the colour
				}
				l.colour, l.size, l.bare, p.text = v.colour, v.size, v.bare, strings.TrimRight(text, " –—") // a long dash is no pole
			}
			if first, behind, ok := strings.Cut(p.text, " "); ok && l.colour != "" && l.size == "" && value.IsSection(first) {
				l.size, l.bare, p.text = first, true, strings.TrimSpace(behind)
			}
			if at := strings.LastIndexByte(p.text, ' '); at > 0 && l.size == "" && value.IsSection(p.text[at+1:]) {
				l.size, l.bare, p.text, needs = p.text[at+1:], true, p.text[:at], true
			}
			if first, place, ok := strings.Cut(p.text, " "); ok && words.ComesFrom(table.Fold(first)) && l.colour != "" {
				p.text = "to " + place // it comes from its far end
			}
			if to, ok := cutToWord(p.text); ok && len(l.texts)+len(l.colour) > 0 {
				if l.to != "" || strings.Contains(to, ": ") || strings.Contains(to, ", ") || dashes.MatchString(to) {
					return false
				}
				l.to, last, far = endOf(to), false, true
				continue
			}
			text, remark := cutRemark(p.text)
			if saysMore(text) || saysEnd(remark) {
				return false
			}
			l.behind = l.behind || len(l.texts) > 0 && l.colour+l.size != ""
			l.texts = append(l.texts, text)
			if remark != "" {
				l.notes = append(l.notes, remark)
			}
			last = true
		}
	}
	return !needs || l.colour != ""
}

// mostWords is how many words the name of a wire has: more are a sentence (no source).
const mostWords = 6

// saysMore reports whether a text is no name and no remark: it is a sentence, says an end or where the wire goes or comes from, or has
// dashes between what could be several things.
func saysMore(text string) bool {
	w := strings.Fields(table.Fold(text))
	if len(w) > mostWords || value.IsSection(w[len(w)-1]) || startsTo(text) {
		return true
	}
	if saysEnd(text) {
		return true
	}
	for i, s := range w {
		if last := i+1 == len(w); !last && (s == "-" || s == "--" || i > 0 && slices.Contains(words.ToWords(), s)) ||
			s == ">" || strings.Contains(s, ":") {
			return true
		}
	}
	return false
}

// wholeEnd is a connector and its cavity.
var wholeEnd = regexp.MustCompile(`^[A-Z]{1,4}[0-9]{0,3}[:./-][0-9]{1,3}$`)

// saysEnd reports whether a text is or names an end, or says where a wire comes from or goes.
func saysEnd(text string) bool {
	w := strings.Fields(table.Fold(text))
	for i, s := range w {
		if words.ComesFrom(s) || i+1 < len(w) && (words.LeadsFar(s) || name.IsPinWord(s) && name.IsCavity(w[i+1])) {
			return true
		}
	}
	return wholeEnd.MatchString(text)
}

// cutToWord takes a word for where a wire goes off the front of a piece.
func cutToWord(text string) (place string, ok bool) {
	low := strings.ToLower(text)
	for _, w := range words.ToWords() {
		if len(w) > 1 && strings.HasPrefix(low, w+" ") && len(low) == len(text) {
			return words.WithoutArticle(strings.TrimSpace(text[len(w):])), true
		}
	}
	return "", false
}

// cut parts a line in its pieces: at wide marks, at brackets, and at narrow marks where a piece between them is a value.
func cut(rest string, r reader) (all []piece) {
	for _, p := range brackets(rest) {
		if p.aside {
			if some := valued(p.text, r); some != nil {
				all = append(all, some...)
			} else {
				all = append(all, p)
			}
			continue
		}
		for _, w := range wide.Split(p.text, -1) {
			if w = strings.Trim(w, " \t,;"); strings.Trim(w, "-–—=") == "" {
				continue
			}
			w = strings.TrimPrefix(strings.TrimPrefix(strings.TrimPrefix(w, "- "), "– "), "= ")
			if some := valued(w, r); some != nil {
				all = append(all, some...)
			} else {
				all = append(all, piece{text: w})
			}
		}
	}
	return all
}

// valued parts a text at its narrow marks; nil where no piece is a value.
func valued(text string, r reader) (all []piece) {
	if !strings.ContainsAny(text, ",;:-–—") {
		return nil // most texts
	}
	found := false
	marks := narrow
	if r.dash {
		marks = dashed
	}
	for _, s := range marks.Split(text, -1) {
		if s = strings.Trim(s, " ,;"); s != "" {
			_, ok := valuesOf(s, r)
			found = found || ok || len(all) > 0 && startsTo(s)
			all = append(all, piece{text: s})
		}
	}
	if !found {
		return nil
	}
	var out []piece
	for _, p := range all { // what stands between two values is one text again
		if _, ok := valuesOf(p.text, r); !ok && len(out) > 0 {
			if _, before := valuesOf(out[len(out)-1].text, r); !before && !startsTo(p.text) {
				at := strings.Index(text, out[len(out)-1].text)
				if end := strings.Index(text[at:], p.text); at >= 0 && end > 0 {
					out[len(out)-1].text = text[at : at+end+len(p.text)]
					continue
				}
			}
		}
		out = append(out, p)
	}
	return out
}

func startsTo(text string) bool { _, ok := cutToWord(text); return ok }

// brackets parts a line at those of its brackets that stand behind a blank.
func brackets(text string) (all []piece) {
	for from := 0; ; {
		at := strings.Index(text[from:], "(")
		if at < 0 {
			return append(all, piece{text: text})
		}
		at += from
		end := strings.IndexByte(text[at:], ')')
		if end < 0 {
			return append(all, piece{text: text})
		}
		if at > 0 && text[at-1] != ' ' && text[at-1] != '\t' {
			from = at + end
			continue
		}
		all = append(all, piece{text: text[:at]}, piece{text: withoutBlanks(text[at+1 : at+end]), aside: true,
			joined: at > 1 && text[at-2] != ' ' && text[at-1] == ' '})
		text, from = text[at+end+1:], 0
	}
}

// values are the colour and the size that a piece is.
type values struct {
	colour, size string
	bare         bool
}

// valuesOf reads a piece that is a colour, a size or both, and nothing else.
func valuesOf(text string, r reader) (v values, ok bool) {
	if isColour(text, r) {
		return values{colour: text}, true
	}
	if !value.HasDigit(text) {
		return v, false
	}
	if size, bare := sizeOf(text); size {
		return values{size: text, bare: bare}, true
	}
	for at, c := range text {
		if c != ' ' {
			continue
		}
		a, b := text[:at], strings.TrimSpace(text[at:])
		if size, bare := sizeOf(b); size && (isColour(a, r) || r.loose && letters.MatchString(a)) {
			return values{a, b, bare}, true
		}
		if size, bare := sizeOf(a); size && (isColour(b, r) || r.loose && letters.MatchString(b)) {
			return values{b, a, bare}, true
		}
	}
	return v, false
}

// within parts a colour and a size off the end of a text, or its beginning, "INJ1 20 yellow/blue"; called is "" where the two do not stand
// there.
func within(text string, r reader) (v values, called string) {
	if !value.HasDigit(text) {
		return v, ""
	}
	w := strings.Fields(text)
	for n := 2; n < 5 && n < len(w); n++ {
		at := len(w) - n
		if v, ok := valuesOf(strings.Join(w[at:], " "), r); ok && v.colour != "" && v.size != "" {
			return v, strings.Join(w[:at], " ")
		}
		if v, ok := valuesOf(strings.Join(w[:n], " "), r); ok && v.colour != "" && v.size != "" {
			if _, more := valuesOf(strings.Join(w[:n+1], " "), r); !more && !(v.bare && len(w[n]) < 3) { // "red 12 V feed"
				return v, strings.Join(w[n:], " ")
			}
		}
	}
	return v, ""
}

// cutRemark parts the words behind a comma off a text that names a wire, where they are more than a further name.
func cutRemark(text string) (called, remark string) {
	called, behind, ok := strings.Cut(text, ", ")
	if !ok || len(strings.Fields(behind)) < 3 && name.StateOf(called) == name.Used {
		return text, ""
	}
	return called, behind
}

// numbered is a colour with a number behind a stroke, as wires are marked that have one colour.
var numbered = regexp.MustCompile(`^(\pL{3,})/[0-9]{1,2}$`)

// isColour reports whether a text is a colour and no digits alone.
func isColour(text string, r reader) bool {
	if r.key != nil && r.key.Written(text) && !value.HasDigit(text) {
		return true
	}
	if len(text) < 2 || value.HasDigit(text) {
		return false
	}
	_, ok := value.ParseColour(text, r.lang)
	return ok
}

// gauges are the sizes without unit that are read: as wire is made in.
var gauges = []string{"4", "6", "8", "10", "12", "14", "16", "18", "20", "22", "24", "26", "28", "30"}

// sizeOf reports whether a text is a size of wire, and whether it has no unit.
func sizeOf(text string) (size, bare bool) {
	if !value.HasDigit(text) || strings.ContainsAny(text, "VvΩ") || text[0] == '+' || text[0] == '-' {
		return false, false
	}
	if strings.Trim(text, "0123456789.,") == "" {
		return value.IsSection(text) || slices.Contains(gauges, text), true
	}
	g, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown)
	return ok && g.Size != "" && !g.IsCable(), false
}

// isRemark reports whether a text says what is done with a wire and does not name it.
func isRemark(text string) bool {
	first, _, _ := strings.Cut(text, ",")
	twisted, shielded := twists.FindStringIndex(first), shields.FindStringIndex(first)
	return doingword.Says(first) || twisted != nil && twisted[0] == 0 || shielded != nil && shielded[0] == 0
}
