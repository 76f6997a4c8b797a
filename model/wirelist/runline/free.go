package runline

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Free parts a line that says of the cavity it begins with that no wire goes on from there: its state stands in the place of the far end.
//
//	P1-12 spare, blue, coiled up under the board
//	P1-13 empty
func Free(text string) (end, state string, rest []string) {
	if each := spread(text); each != nil {
		text = each[0] // Apart gives the others theirs
	}
	w := strings.Fields(text)
	e := endAt(w, 0)
	if !e.plain {
		return "", "", nil
	}
	says := strings.TrimLeft(strings.Join(w[e.words:], " "), " ,;:-–—=")
	if says == "" || name.StateOf(says) == name.Used {
		return "", "", nil
	}
	at := strings.IndexAny(says, ",;(")
	if at < 0 {
		return e.text, says, []string{"", "", "", "", ""}
	}
	t := tailOf(says[at:])
	return e.text, strings.TrimSpace(says[:at]), []string{t.colour, t.size, value.JoinNonEmpty("; ", t.signal, t.note), "", ""}
}

// Apart gives each cavity that a line of several says to be free a line of its own, "P1-5, P1-6 empty", "P1-7..9 not connected"; all other
// lines are given back as they are.
func Apart(rows []table.Row) (all []table.Row) {
	for _, r := range rows {
		each := spread(r.Cells[0])
		if len(each) < 2 || len(r.Cells) != 1 {
			all = append(all, r)
			continue
		}
		for _, line := range each {
			one := r
			one.Cells = []string{line}
			all = append(all, one)
		}
	}
	return all
}

// spread is a line for each cavity that a line says to be free; nil where it is none.
func spread(text string) (each []string) {
	const most = 7 // words before the state (no source)
	w := strings.Fields(text)
	for k := 1; k < min(len(w), most+1); k++ {
		says := strings.TrimLeft(strings.Join(w[k:], " "), " ,;:-–—=")
		if says == "" || name.StateOf(says) == name.Used {
			continue
		}
		for _, end := range ends(strings.TrimRight(strings.Join(w[:k], " "), " ,;:-–—=")) {
			each = append(each, end+" "+says)
		}
		return each
	}
	return nil
}

// ends are the cavities of one connector that a text names, "P1-5", "P1-5, P1-6 and 8", "P1-7..9"; nil where it names anything else.
func ends(text string) (all []string) {
	connector, mark := "", ""
	for _, word := range []string{" and ", " & ", " und ", " et ", " y ", " e ", " en ", " och ", " og "} {
		text = strings.ReplaceAll(text, word, ", ")
	}
	for piece := range strings.SplitSeq(text, ",") {
		piece = strings.TrimSpace(piece)
		first, last, ranged := cutRange(piece)
		of, pin, ok := name.SplitEnd(first)
		switch {
		case ok && IsPlainEnd(first):
			if connector != "" && of != connector {
				return nil
			}
			connector, mark = of, first[len(of):len(first)-len(pin)]
		case connector != "" && name.IsCavity(first):
			pin = first
		default:
			return nil
		}
		if !ranged {
			all = append(all, connector+mark+pin)
			continue
		}
		last = strings.TrimPrefix(last, connector+mark)
		from, err := strconv.Atoi(pin)
		to, wrong := strconv.Atoi(last)
		if err != nil || wrong != nil || to <= from || to-from > 100 {
			return nil
		}
		for n := from; n <= to; n++ {
			all = append(all, connector+mark+strconv.Itoa(n))
		}
	}
	return all
}

// cutRange parts "P1-7..9" in its first and its last cavity.
func cutRange(text string) (first, last string, ok bool) {
	for _, mark := range []string{"...", "..", "…", " to ", " thru ", " through ", " bis ", " - ", " – ", "–"} {
		if first, last, ok = strings.Cut(text, mark); ok && first != "" {
			return strings.TrimSpace(first), strings.TrimSpace(last), true
		}
	}
	return text, "", false
}

// Lines keeps what the lines of a sheet are parted in: most are asked for several times.
type Lines map[string]parted

type parted struct {
	from, to string
	rest     []string
}

// Part is Part of a line.
func (l *Lines) Part(text string) (from, to string, rest []string) {
	p, ok := (*l)[text]
	if !ok {
		if *l == nil {
			*l = Lines{}
		}
		p.from, p.to, p.rest = Part(text)
		(*l)[text] = p
	}
	return p.from, p.to, slices.Clone(p.rest)
}
