package shape

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// pinsBehindFar takes the column right behind that of the far end for the cavities there, where its heading is a word for cavities
// with the heading of the far end before it, its first letters, or a word for the other side, and an earlier column has the cavities
// of the near end.
//
//	Dash pin | Function | Other end | O/E pin
//	1        | Supply   | Fuse box  | F6
func (h Headings) pinsBehindFar(cols []Column) {
	near, to := -1, -1
	if i := slices.IndexFunc(cols, func(c Column) bool { return c.Field == name.FieldTo }); i >= 0 && i+1 < len(cols) && !cols[i+1].Given &&
		cols[i+1].Field != name.FieldToPin && h.isFarPinHead(cols[i+1].Head) {
		cols[i+1].Field, cols[i+1].known = name.FieldToPin, true
	}
	for i, c := range cols {
		switch {
		case c.Field == name.FieldFrom || c.Field == name.FieldFromPin || c.Field == name.FieldRun || c.Field == name.FieldVia,
			c.Field == name.FieldToPin && (to < 0 || i != to+1):
			return
		case c.Field == name.FieldTo && to >= 0:
			return
		case c.Field == name.FieldTo, near >= 0 && to < 0 && (c.Field == name.FieldKeep || c.Field == name.FieldConnector && near < i-1) &&
			!c.Given && i+1 < len(cols) && (h.headsPins(cols[i+1].Head) && (words.IsWordsOf(h.pinHead(cols[i+1].Head), c.Head) ||
			words.HeadsSide(c.Head, strings.Join(withoutLast(h.pinHead(cols[i+1].Head)), " "))) || h.isFarPinHead(cols[i+1].Head) ||
			h.headsPins(cols[i+1].Head) && h.IsPinOf(cols[i+1].Head, c.Head)):
			to = i
		case to < 0 && !c.Given && (near < 0 && c.Field == name.FieldNumber || (near < 0 || cols[near].Field == name.FieldNumber) &&
			(c.Field == name.FieldPin || c.Field == name.FieldKeep && h.headsPins(c.Head))):
			near = i // a running number may stand before the cavities
		}
	}
	if to < 0 || near < 0 || near > to || to+1 >= len(cols) || cols[to+1].Given || cols[to+1].Field != name.FieldToPin &&
		!h.isFarPinHead(cols[to+1].Head) &&
		(cols[to+1].Field != name.FieldKeep || !h.headsPins(cols[to+1].Head) || !h.IsOfHead(cols[to+1].Head, cols[to].Head)) {
		return
	}
	cols[to].Field, cols[to+1].Field = name.FieldTo, name.FieldToPin
	if words.HeadsSide(cols[to].Head, strings.Join(withoutLast(h.pinHead(cols[to+1].Head)), " ")) {
		cols[to].known, cols[to+1].known = true, true
	}
	switch cols[near].Field {
	case name.FieldKeep:
		h.ofDevice(&cols[near], name.FieldPin)
	case name.FieldNumber:
		cols[near].Field = name.FieldPin // the far end has its own
	}
}

// isFarPinHead reports whether a heading is a word for cavities beside one for the other side: "Far pin", "Dest. terminal", "Pin there".
func (h Headings) isFarPinHead(head string) bool {
	w := name.Words(table.Fold(head))
	if len(w) != 2 {
		return false
	}
	if h.Words[w[0]].Field == name.FieldPin {
		w[0], w[1] = w[1], w[0]
	}
	return h.Words[w[1]].Field == name.FieldPin && isFarSide(w[0])
}

// isFarSide reports whether a word is one for the other side of a wire.
func isFarSide(w string) bool {
	switch w {
	case "other", "far", "remote", "mate", "mating", "opposite", "dest", "destination", "there", "their", "its", "device":
		return true
	}
	return false
}

// IsPinOf reports whether a heading is a word for cavities and, behind it, the beginning of the heading of some devices: "Pin strum."
// beside "Strumento".
func (h Headings) IsPinOf(head, devices string) bool {
	w := name.Words(table.Fold(head))
	return len(w) == 2 && h.Words[w[0]].Field == name.FieldPin && h.Words[w[1]].Field == "" && words.Shortens(w[1], devices)
}

// headsPins reports whether a heading is some words and a word for cavities behind them, "Dash pin".
func (h Headings) headsPins(head string) bool {
	w := h.pinHead(name.WithoutBrackets(head))
	return len(w) > 1 && len(w) < 5 && strings.Trim(w[0], "0123456789") != "" && h.Words[w[len(w)-1]].Field == name.FieldPin
}

// pinHead are the words of a heading; one that is made of two, the second a word for cavities, is parted: "Geräteklemme".
func (h Headings) pinHead(head string) []string {
	w := name.Words(table.Fold(head))
	if len(w) == 2 && h.Words[w[0]].Field == name.FieldPin && h.Words[w[1]].Field == "" && len(w[1]) > 1 {
		return []string{w[1], w[0]} // "Pin strumento"
	}
	if len(w) != 1 || h.Words[w[0]].Field != "" {
		return w
	}
	for at := len(w[0]) - 3; at > 2; at-- {
		if back := w[0][at:]; h.Words[back].Field == name.FieldPin && len(back) > 2 {
			return []string{w[0][:at], back}
		}
	}
	return w
}

// IsOfHead reports whether the words before the last of a heading of cavities stand for another heading: they are its words, their
// first letters, the beginning of the first one, or a word for the other side.
func (h Headings) IsOfHead(pins, of string) bool {
	w, far := h.pinHead(pins), name.Words(name.WithoutBrackets(table.Fold(of)))
	w = w[:len(w)-1]
	switch {
	case len(far) == 0 || len(w) == 0:
		return false
	case words.IsWordsOf(h.pinHead(pins), of), len(w) == 1 && slices.Contains(far, w[0]),
		len(w[0]) > 2 && strings.HasPrefix(far[0], w[0]):
		return true
	}
	return isFarSide(w[0])
}

// withoutLast is some words but the last.
func withoutLast(w []string) []string { return w[:max(0, len(w)-1)] }
