package leaders

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Lines of several connectors that begin with the whole end of a wire, and have rows of dots between all that they say: what stands at one
// place in most of them is of one kind.
//
//	A is the plug at the mast, B the one at the hull
//	A1 ..... red 14ga ..... anchor light ..... lamp
//	A2 ..... nothing
//	B3 ..... blu 16 ....... horn ............. B1

// endLine is one such line: its end, and the parts behind it.
type endLine struct {
	end   string
	parts []string
	aside string // in brackets behind the last
}

// Ends puts a table in the place of all such lines of a list; the rows are as they were where there are none.
func Ends(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows
	}
	of := map[int]endLine{}
	for i, r := range t.Rows {
		if l, ok := endLineOf(r); ok {
			of[i] = l
		}
	}
	if len(of) < least {
		return t.Rows // most lists
	}
	heads := headsOf(of)
	if heads == nil {
		return t.Rows
	}
	parted := connectors(of)
	var out []table.Row
	for i, r := range t.Rows {
		l, is := of[i]
		if !is {
			out = append(out, r)
			continue
		}
		if _, before := of[i-1]; !before {
			out = append(out, table.Row{Line: r.Line, Cells: headCells(heads), First: true, Ruled: t.Marked})
		}
		r.First, r.Prose, r.Point, r.Gap, r.Drawn = false, false, false, nil, nil
		r.Cells = l.cells(heads, parted)
		out = append(out, r)
	}
	return out
}

// endLineOf reads a row as such a line.
func endLineOf(r table.Row) (l endLine, ok bool) {
	const shortest, longest = 6, 200 // bytes (no source)
	if len(r.Cells) == 0 || len(r.Cells) > 2 || r.Level > 0 || len(r.Cells[0]) < shortest || len(r.Cells[0]) > longest ||
		!strings.Contains(r.Cells[0], "..") && !strings.Contains(r.Cells[0], "__") && !strings.Contains(r.Cells[0], "…") {
		return l, false // most rows
	}
	all := strings.FieldsFunc(shortDots(strings.Join(r.Cells, " ")), func(r rune) bool { return r == '\n' })
	if len(all) < 2 {
		return l, false
	}
	for i := range all {
		all[i] = strings.TrimSpace(all[i])
	}
	l.end, l.parts = all[0], all[1:]
	last := &l.parts[len(l.parts)-1]
	if open := strings.LastIndexByte(*last, '('); open > 0 && strings.HasSuffix(*last, ")") {
		l.aside, *last = strings.Trim((*last)[open:], "()"), strings.TrimSpace((*last)[:open])
	}
	return l, isEnd(l.end)
}

// shortDots puts a line feed in the place of each row of dots, of two or more with a blank before and behind them.
func shortDots(text string) string {
	text = dots.ReplaceAllString(text, "\n")
	return strings.ReplaceAll(strings.ReplaceAll(text, " .. ", "\n"), " __ ", "\n")
}

// isEnd reports whether a word is a connector and its cavity, "A1", "P2-3", and no cavity alone.
func isEnd(w string) bool {
	if strings.Contains(w, " ") || len(w) < 2 || !strings.ContainsAny(w, "0123456789") || isPin(w) {
		return false
	}
	if lettered(w) != "" {
		return true
	}
	_, pin, ok := name.SplitEnd(w)
	return ok && name.IsCavity(pin)
}

// lettered is the letter of an end that is one letter and a number, "A12"; "" of any other.
func lettered(w string) string {
	if len(w) > 1 && len(w) < 4 && w[0] >= 'A' && w[0] <= 'Z' && strings.Trim(w[1:], "0123456789") == "" {
		return w[:1]
	}
	return ""
}

// connectors are the letters of such ends, where there are two or more of them: each is a connector, and not a row of one.
func connectors(of map[int]endLine) map[string]bool {
	letters := map[string]bool{}
	for _, l := range of {
		if letter := lettered(l.end); letter != "" {
			letters[letter] = true
		}
	}
	if len(letters) < 2 {
		return nil
	}
	return letters
}

// The kinds of what stands at one place of the lines.
const (
	kindText   = ""
	kindColour = "Colour"
	kindSize   = "Size"
	kindBoth   = "Wire"
)

// headsOf are the kinds of the places of the lines, by the most of them; nil where no place has colours or sizes.
func headsOf(of map[int]endLine) (heads []string) {
	places := 0
	for _, l := range of {
		places = max(places, len(l.parts))
	}
	valued := false
	texts := 0
	for k := range places {
		filled, colours, sizes, both := 0, 0, 0, 0
		for _, l := range of {
			if k >= len(l.parts) || len(l.parts) == 1 && name.StateOf(l.parts[0]) != name.Used {
				continue
			}
			filled++
			_, colour := value.ParseColour(l.parts[k], "")
			g, size := value.ParseGauge(l.parts[k], value.BareAWG, value.MarkUnknown)
			_, two := value.SizeAndColour(l.parts[k], value.BareAWG, "", value.MarkUnknown)
			switch {
			case two:
				both++
			case colour && strings.Trim(l.parts[k], "0123456789") != "":
				colours++
			case size && g.Size != "":
				sizes++
			}
		}
		switch {
		case 3*(both+colours+sizes) < 2*filled:
			heads = append(heads, kindText)
			texts++
			continue
		case both > 0 || colours > 0 && sizes > 0:
			heads = append(heads, kindBoth)
		case colours > 0:
			heads = append(heads, kindColour)
		default:
			heads = append(heads, kindSize)
		}
		if slices.Contains(heads[:k], heads[k]) {
			return nil // two columns of one kind
		}
		valued = true
	}
	if !valued || texts > 3 || slices.Contains(heads, kindBoth) && (slices.Contains(heads, kindColour) ||
		slices.Contains(heads, kindSize)) {
		return nil
	}
	return heads
}

// headCells are the headings of the table.
func headCells(heads []string) []string {
	out := []string{"From"}
	for _, h := range heads {
		switch {
		case h == kindBoth:
			out = append(out, "Colour", "Size")
		case h != kindText:
			out = append(out, h)
		}
	}
	return append(out, "Signal", "To", "Note")
}

// cells are those of a line: of its texts the first is the name, the second the far end.
func (l endLine) cells(heads []string, connectors map[string]bool) []string {
	out := []string{ofConnector(l.end, connectors)}
	var texts []string
	free := len(l.parts) == 1 && name.StateOf(l.parts[0]) != name.Used
	for k, h := range heads {
		part := ""
		if k < len(l.parts) && !free {
			part = l.parts[k]
		}
		switch h {
		case kindText:
			if part != "" {
				texts = append(texts, part)
			}
		case kindBoth:
			colour, size := partValues(part)
			out = append(out, colour, size)
		default:
			out = append(out, part)
		}
	}
	if free {
		texts = l.parts
	}
	for len(texts) < 2 {
		texts = append(texts, "")
	}
	return append(out, texts[0], ofConnector(texts[1], connectors), strings.Join(append(texts[2:], nonEmpty(l.aside)...), "; "))
}

// partValues parts a colour and a size that stand together, either first.
func partValues(text string) (colour, size string) {
	w := strings.Fields(text)
	for n := 1; n < len(w); n++ {
		front, back := strings.Join(w[:n], " "), strings.Join(w[n:], " ")
		if g, ok := value.ParseGauge(back, value.BareAWG, value.MarkUnknown); ok && g.Size != "" {
			return front, back
		}
		if g, ok := value.ParseGauge(front, value.BareAWG, value.MarkUnknown); ok && g.Size != "" {
			return back, front
		}
	}
	if _, ok := value.ParseColour(text, ""); ok && strings.Trim(text, "0123456789") != "" {
		return text, ""
	}
	return "", text
}

// ofConnector writes a colon between the letter of a connector and its cavity.
func ofConnector(end string, connectors map[string]bool) string {
	if letter := lettered(end); connectors[letter] && letter != "" {
		return letter + ":" + end[1:]
	}
	return end
}

func nonEmpty(text string) []string {
	if text == "" {
		return nil
	}
	return []string{text}
}
