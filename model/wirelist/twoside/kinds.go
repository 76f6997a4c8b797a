package twoside

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// The pins of one thing may stand beside each other by their kind, what goes out on the left and what comes in on the right. A row joins
// two of them by nothing but its line: no wire runs between them.
//
//	Output Pin | Function   | Instead | Input Pin | Function   | Instead
//	1          | Pump run   |         | 10        | Float high |
//	2          | Valve open | Horn    | 11        | Float low  |

// kind is a table of two kinds of pins: its headings, one row or two, the columns of both halves and those of one half in words.
type kind struct {
	lines       int
	left, right []int
	head        []string
	changed     int // the column of a half that says what stands there instead; −1 for none
}

// kindsOf is the table of two kinds whose headings begin in row i; nil where they are anything else.
func kindsOf(h shape.Headings, t *table.Table, i int) *kind {
	const most = 8 // columns (no source)
	first := t.Rows[i]
	if n, _ := first.Filled(); n < 2 || len(first.Cells) > most || len(first.Cells) < 4 || first.Prose || t.Marked && !first.First {
		return nil
	}
	if k := kindsIn(h, first.Cells, 1); k != nil && k.fits(t.Rows[i+1:]) {
		return k
	}
	if i+1 == len(t.Rows) || t.Rows[i+1].Line > first.Line+2 {
		return nil
	}
	both := make([]string, max(len(first.Cells), len(t.Rows[i+1].Cells)))
	copy(both, first.Cells)
	for k, c := range t.Rows[i+1].Cells {
		if c != "" && (len(c) > 24 || strings.ContainsAny(c, "0123456789")) {
			return nil
		}
		both[k] = strings.TrimSpace(both[k] + " " + c)
	}
	if k := kindsIn(h, both, 2); k != nil && k.fits(t.Rows[i+2:]) {
		return k
	}
	return nil
}

// kindsIn parts headings in two halves that are the same but for the kind of the pins in the first column of each.
func kindsIn(h shape.Headings, head []string, lines int) *kind {
	n := len(head) / 2
	if len(head)%2 != 0 || n < 2 || !areKinds(head[0], head[n]) {
		return nil
	}
	k := &kind{lines: lines, head: []string{"Pin"}, changed: -1}
	for at := range n {
		k.left, k.right = append(k.left, at), append(k.right, at+n)
		if at == 0 {
			continue
		}
		if head[at] == "" || !strings.EqualFold(head[at], head[at+n]) {
			return nil
		}
		w := name.Words(table.Fold(head[at]))
		switch {
		case saysChanged(w):
			k.changed = at
			k.head = append(k.head, "Note")
		case h.Words[w[len(w)-1]].Field == name.FieldSignal, at == 1 && h.Words[strings.Join(w, " ")].Field == "":
			k.head = append(k.head, "Signal")
		default:
			k.head = append(k.head, head[at])
		}
	}
	return k
}

// areKinds reports whether two headings are the same word for pins with two words for kinds of them that go together.
func areKinds(a, b string) bool {
	of := func(head string) (kind string, pins bool) {
		for _, w := range strings.FieldsFunc(table.Fold(head), func(r rune) bool { return strings.ContainsRune(" ()-.:#/", r) }) {
			switch {
			case name.IsPinWord(w):
				pins = true
			case w == "side" || w == "row" || w == "seite":
			case kind != "":
				return "", false
			default:
				kind = strings.TrimSuffix(w, "s")
			}
		}
		return kind, pins
	}
	x, isX := of(a)
	y, isY := of(b)
	if !isX || !isY {
		return false
	}
	for _, pair := range kinds {
		if p, q, _ := strings.Cut(pair, "/"); p == x && q == y || p == y && q == x {
			return true
		}
	}
	return false
}

// kinds are the kinds of pins that go together. Common words, from memory, no source.
var kinds = strings.Fields(`output/input out/in digital/analog digital/analogue digital/analogic left/right upper/lower top/bottom odd/even
	ausgang/eingang ausgange/eingange analog/digital linke/rechte obere/untere ungerade/gerade sortie/entree gauche/droite impaire/paire
	salida/entrada izquierda/derecha impar/par uscita/ingresso sinistra/destra dispari/pari saida/entrada uitgang/ingang utgang/ingang
	udgang/indgang wyjscie/wejscie vystup/vstup`)

// saysChanged reports whether the words of a heading are of what stands in a place of what is usual there.
func saysChanged(w []string) bool {
	for _, one := range w {
		switch one {
		case "different", "changed", "instead", "else", "abweichend", "stattdessen", "geandert", "autre", "otro", "distinto", "diverso":
			return true
		}
	}
	return false
}

// fits reports whether the rows below are of such a table: no pin comes twice, and few of them say the same of both of
// their pins, as they would of the two ends of wires.
func (k *kind) fits(rows []table.Row) bool {
	seen, both, left, right, same := map[string]bool{}, 0, 0, 0, 0
	for _, r := range rows {
		if ends(r) {
			break
		}
		l, c := pick(r.Cells, k.left), pick(r.Cells, k.right)
		for _, half := range [][]string{l, c} {
			if pin := half[0]; !value.IsNothing(pin) && pin != "" {
				if seen[pin] || !name.IsCavity(pin) {
					return false
				}
				seen[pin] = true
			}
		}
		hasLeft, hasRight := l[0] != "", c[0] != ""
		if hasLeft {
			left++
		}
		if hasRight {
			right++
		}
		if hasLeft && hasRight {
			both++
			if l[1] != "" && alike(l[1], c[1]) {
				same++
			}
		}
	}
	return both > 1 && left > 2 && right > 1 && 2*same < both
}

// alike reports whether two texts have a word in common, or are the two sides of one line: what sends and what receives.
func alike(a, b string) bool {
	for w := range strings.FieldsSeq(table.Fold(a)) {
		for v := range strings.FieldsSeq(table.Fold(b)) {
			switch {
			case w == v && strings.Trim(w, "0123456789-/") != "" && len(w) > 1:
				return true
			case strings.HasPrefix(w, "tx") && strings.HasPrefix(v, "rx"), strings.HasPrefix(w, "rx") && strings.HasPrefix(v, "tx"):
				return true
			}
		}
	}
	return false
}

// ends reports whether a row is of no table of pins: a text, or headings of the next one.
func ends(r table.Row) bool {
	return r.First || r.Level > 0 || r.Prose || shape.IsText(r) && r.Cells[0] != ""
}

// goesOn reports whether a row holds nothing but what goes on with the name in the row above.
func goesOn(above, r table.Row) bool {
	n, first := r.Filled()
	return n == 1 && r.Cells[1] == first && r.Line == above.Line+max(int(above.Spans), 1) && above.Cells[1] != ""
}

// rows puts the rows of both halves one below the other: those of the left, then those of the right. What stands instead of what is usual
// is the signal, what is usual a note.
func (k *kind) rows(all []table.Row) (out []table.Row) {
	head := all[k.lines-1]
	head.Cells, head.First, head.Ruled = k.head, all[0].First, all[0].Ruled
	out = append(out, head)
	for _, half := range [][]int{k.left, k.right} {
		for _, r := range all[k.lines:] {
			r.Cells = pick(r.Cells, half)
			if strings.Join(r.Cells, "") == "" {
				continue
			}
			if last := &out[len(out)-1]; len(out) > 1 && goesOn(*last, r) {
				last.Cells[1] += " " + r.Cells[1]
				last.Spans = uint8(r.Line-last.Line) + 1
				continue
			}
			if c := k.changed; c > 1 && r.Cells[c] != "" && !value.IsNothing(r.Cells[c]) {
				r.Cells[1], r.Cells[c] = r.Cells[c], r.Cells[1]
			}
			out = append(out, r)
		}
	}
	return out
}
