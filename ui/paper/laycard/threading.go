package laycard

import (
	"fmt"
	"html"
	"html/template"
	"slices"
	"strings"

	"contralay/calc/phase/threading"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// What is threaded on before the contacts, as a matrix: a row for each part in its order, a column
// for each end, a cross where the part goes over the tails of that end.

// smallSize is the size of the small letters, mm.
var smallSize = float64(page.Small.Size())

// Thread is one part that is threaded on, with the ends whose tails it goes over.
type Thread struct {
	threading.Threaded
	Place int   // in the order, from 1
	Ends  []int // terminations, by index
	Own   bool  // it goes over the tails of one end alone, after all others there
}

// Threads are the covers and transitions in the order in which they are threaded on. Label, boot and
// contacts of an end come after them and go over its own tails alone.
func Threads(m list.Maker) []Thread {
	tails := make([][]string, len(m.H.Terminations))
	for t := range m.H.Terminations {
		tails[t] = threading.Keys(threading.TailOf(m.S, m.H.Terminations[t].ID))
	}
	var out []Thread
	all := threading.Threading(m.S)
	keys := threading.Keys(all)
	for k, x := range all {
		if !x.What.IsCover() && x.What != sheet.PartTransition {
			continue
		}
		th := Thread{Threaded: x, Place: len(out) + 1}
		for t := range tails {
			if slices.Contains(tails[t], keys[k]) {
				th.Ends = append(th.Ends, t)
			}
		}
		out = append(out, th)
	}
	for k := range out {
		if th := &out[k]; th.What == sheet.PartSheath && len(th.Ends) == 1 {
			th.Own = !slices.ContainsFunc(out[k+1:], func(o Thread) bool { return slices.Contains(o.Ends, th.Ends[0]) })
		}
	}
	return out
}

// Measures of the matrix, mm.
const (
	endWide    unit.Millimetre = 5.2 // of the column of an end, at least
	mostEnd    unit.Millimetre = 8.5
	matrixText unit.Millimetre = 62 // of what stands before the ends, at least
)

// Matrix is what is threaded on, and where, as blocks: a table for each so many ends as there is room
// for. The sheaths that go over one end alone, last there, are one row together.
func Matrix(m list.Maker) []page.Block {
	threads := Threads(m)
	if len(threads) == 0 {
		return nil
	}
	room := page.Wide - matrixText
	per := int(room / endWide)
	note := page.Text("Thread these on in this order, before the contacts. X: it goes over the tails of that end. Branches that do not "+
		"meet are free to go in any order. How long the sheath of a branch is cut stands with the branch.", page.Small)
	note.KeepNext = true
	out := []page.Block{note}
	var ends []int
	for t := range m.H.Terminations {
		ends = append(ends, t)
	}
	for part := range slices.Chunk(ends, per) {
		out = append(out, matrix(m, threads, part))
	}
	return out
}

// matrix is the order over some of the ends; parts that go over none of them are left out.
func matrix(m list.Maker, threads []Thread, ends []int) page.Block {
	each := min(max((page.Wide-matrixText)/unit.Millimetre(len(ends)), endWide), mostEnd)
	all := page.Wide - 0.3 // half of the outer lines lie outside
	text := all - each*unit.Millimetre(len(ends))
	no, of := unit.Millimetre(7), unit.Millimetre(12)
	for _, th := range threads {
		of = max(of, page.Strong.Wide(th.Of)+cellPad)
	}
	what := text - no - of
	headHigh := unit.Millimetre(10)
	for _, t := range ends {
		headHigh = max(headHigh, page.Strong.Wide(m.H.Terminations[t].ID)+2.5)
	}
	var open, head strings.Builder
	fmt.Fprintf(&open, `<table class="p9 threading" style="width:%s"><colgroup><col style="width:%s"><col style="width:%s"><col style="width:%s">`,
		mm(all), mm(no), mm(of), mm(what))
	for range ends {
		fmt.Fprintf(&open, `<col style="width:%s">`, mm(each))
	}
	open.WriteString("</colgroup>")
	fmt.Fprintf(&head, `<thead><tr style="height:%s"><th class="p9b">no</th><th class="p9b">of</th><th class="p9b">part, cut in %s</th>`,
		mm(headHigh), m.Sys.Name())
	for _, t := range ends {
		fmt.Fprintf(&head, `<th class="p9b" style="padding:0">%s</th>`, upright(m.H.Terminations[t].ID, each, headHigh-0.6))
	}
	head.WriteString("</tr></thead><tbody>")
	c := page.Cut{Open: template.HTML(open.String()), Head: template.HTML(head.String()), HeadHigh: headHigh + 0.2, // #nosec: escaped
		Close: "</tbody></table>", Wide: page.Wide}
	row := func(no, of, part string, cell func(t int) string) {
		var b strings.Builder
		lines := page.Small.Lines(part, what-cellPad)
		high := unit.Millimetre(len(lines))*page.Small.Line() + 0.9
		for n := range lines {
			lines[n] = html.EscapeString(lines[n])
		}
		fmt.Fprintf(&b, `<tr style="height:%s"><td>%s</td><td class="p9b">%s</td><td>%s</td>`, mm(high), no, html.EscapeString(of),
			strings.Join(lines, "<br>"))
		for _, t := range ends {
			fmt.Fprintf(&b, `<td class="p9b" style="padding:.3mm 0;text-align:center">%s</td>`, html.EscapeString(cell(t)))
		}
		b.WriteString("</tr>\n")
		c.Rows = append(c.Rows, page.Row{High: high, HTML: template.HTML(b.String())}) // #nosec: escaped
	}
	place := 0
	for _, th := range threads {
		if th.Own || len(th.Ends) > 0 && !slices.ContainsFunc(ends, func(t int) bool { return slices.Contains(th.Ends, t) }) {
			continue
		}
		place++
		row(fmt.Sprint(place), th.Of, th.says(m), func(t int) string {
			return map[bool]string{true: "X"}[slices.Contains(th.Ends, t)]
		})
	}
	if own := ownOf(threads, ends); len(own) > 0 {
		row("", "", "last, the sheath of its own branch", func(t int) string { return own[t] })
	}
	row("", "", "label sleeve", func(t int) string {
		return strings.TrimSuffix(labelSleeve(m, m.H.Terminations[t].ID), ".0")
	})
	for _, t := range ends {
		if e := &m.H.Terminations[t]; e.Boot.V != "" {
			row("", e.ID, e.Boot.V, func(at int) string { return map[bool]string{true: "X"}[at == t] })
		}
	}
	return page.Block{Cut: &c, Gap: 1}
}

// ownOf is a cross for each of some ends that takes the sheath of its own branch last.
func ownOf(threads []Thread, ends []int) map[int]string {
	out := map[int]string{}
	for _, th := range threads {
		if th.Own && slices.Contains(ends, th.Ends[0]) {
			out[th.Ends[0]] = "X"
		}
	}
	return out
}

// says is a part in words: kind, part, how long it is cut; how it is put on where it passes no tails.
func (th Thread) says(m list.Maker) string {
	says := string(th.What) + " " + th.Part
	if th.What == sheet.PartSheath {
		says = th.Part
	}
	if th.CutMM > 0 {
		says += ", cut " + m.Sys.AtLeast(th.CutMM)
	}
	if th.From == "" {
		says += ", wound on"
	}
	return says
}

// upright is a text that is read from below, for the head of a narrow column.
func upright(text string, wide, high unit.Millimetre) string {
	x, y := float64(wide)/2, float64(high)
	return fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s" `+
		`font-family="Go, Arial, sans-serif" font-size="%[3]s" font-weight="bold"><text transform="translate(%[4]s %[5]s) rotate(-90)">%[6]s</text></svg>`,
		num(float64(wide)-0.2), num(y), num(smallSize), num(x-0.1+smallSize*.36), num(y-0.8), html.EscapeString(text))
}
