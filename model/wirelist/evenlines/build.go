package evenlines

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/toldcells"
)

// build is how the lines of a text are built.
type build struct {
	arrow     string
	near, far style
	sign      string // behind the far end, or behind the cavity
	under     bool   // the lines begin with the cavity of the connector above them, and the arrow is behind the rest
	apart     string // what parts the pieces
}

// What lines are built of. Common practice, no source.
var (
	arrows = [...]string{" -> ", " --> ", " => ", " → ", " ⇒ ", " > ", ", to ", " to ", " - ", " – "}
	signs  = [...]string{": ", " : ", " | ", ", ", " – ", " - ", " ("}
	heads  = [...]string{": ", " : ", ". ", ") ", " = ", " - ", " – "}
	aparts = [...]string{", ", "; ", " | ", " / "}
)

// of parts one line; ok is false where it is of another build.
func (b build) of(text string) (l toldcells.Line, ok bool) {
	if b.under {
		return b.underHead(text)
	}
	from, rest, found := strings.Cut(text, b.arrow)
	if !found {
		return l, false
	}
	to, behind, _ := strings.Cut(rest, b.sign)
	if b.sign == " (" {
		behind = strings.TrimSuffix(behind, ")")
	}
	near, nearPin, ok := b.near.end(from)
	far, farPin, also := b.far.end(to)
	if !ok || !also {
		return l, false
	}
	cells, ok := b.pieces(behind)
	return toldcells.Line{From: near + ":" + nearPin, To: far + ":" + farPin, Cells: cells}, ok
}

// underHead parts a line of the connector above it.
func (b build) underHead(text string) (l toldcells.Line, ok bool) {
	pin, rest, found := strings.Cut(text, b.sign)
	at := strings.LastIndex(rest, b.arrow)
	if !found || at <= 0 {
		return l, false
	}
	if w := strings.Fields(pin); len(w) == 2 && name.IsPinWord(table.Fold(w[0])) {
		pin = w[1]
	}
	far, farPin, ok := b.far.end(rest[at+len(b.arrow):])
	if !ok || !name.IsCavity(pin) {
		return l, false
	}
	if far += ":" + farPin; farPin == "" {
		far = strings.TrimSuffix(far, ":")
	}
	cells, ok := b.pieces(strings.TrimRight(rest[:at], " ,;"))
	return toldcells.Line{To: far, Cells: append([]string{pin}, cells...)}, ok
}

// pieces are what the sign between them parts; ok is false where one of them has another sign in it.
func (b build) pieces(text string) (all []string, ok bool) {
	for p := range strings.SplitSeq(text, b.apart) {
		if p = strings.TrimSpace(p); p == "" {
			continue
		}
		if strings.ContainsAny(p, "()[]|;=") || strings.Contains(p, ": ") || strings.Contains(p, " - ") || strings.Contains(p, " / ") {
			return nil, false
		}
		all = append(all, p)
	}
	return all, true
}
