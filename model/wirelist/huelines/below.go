package huelines

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugwires"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/value"
)

// The wires of each device stand below its name, one a line, and each line begins with a colour.
//
//	### Headlight
//	* Blue – high beam
//	* Black – ground

// heads are the headings of the tables that are made.
var heads = []string{"From", "From pin", "To", "Signal", "Colour", "Size", "Note"}

// group is a device and the lines below it.
type group struct {
	device, size, note string
	at, first, n       int // the line that names it, its first line below and how many there are
	wires              []wire
}

// Below makes rows of a table of such lines; they are as they were where nothing says that they are wires, and where a line with a colour
// stands below no device. told are the lines that name
// the devices, by those of their wires.
func Below(h shape.Headings, t *table.Table) (rows []table.Row, told map[int][]int) {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows, nil // a person has said where its columns are
	}
	var all []group
	for i := 0; i < len(t.Rows); i++ {
		if w, ok := lineOf(t.Rows, i); !ok {
			if w.colour != "" && !strings.HasSuffix(textOf(t.Rows[i]), ".") {
				return t.Rows, nil // a colour, and no sign: another way to write
			}
			continue
		}
		g := group{first: i}
		for ; i < len(t.Rows); i++ {
			w, ok := lineOf(t.Rows, i)
			if !ok || g.n > 0 && t.Rows[i].Line > t.Rows[i-1].Line+1 {
				i--
				break
			}
			g.wires = append(g.wires, w)
			g.n++
		}
		if !g.named(t.Rows) {
			return t.Rows, nil
		}
		if !isRule(g.device) {
			all = append(all, g)
		}
	}
	if !areWires(all) || bothSaid(all) {
		return t.Rows, nil
	}
	return spread(t, all)
}

// bothSaid reports whether every line has something on both sides of an arrow: these are the ends of the wire, and the heading is none.
func bothSaid(all []group) bool {
	for _, g := range all {
		for _, w := range g.wires {
			if w.signal == "" || w.to == "" {
				return false
			}
		}
	}
	return true
}

// lineOf parts a row that begins with a colour.
func lineOf(rows []table.Row, i int) (w wire, ok bool) {
	r := rows[i]
	const most = 120 // bytes (no source)
	if r.Level > 0 || r.Ruled || len(r.Cells) == 0 || len(r.Cells) > 3 || len(r.Cells) > 1 && r.Raw == "" || len(r.Cells[0]) > most {
		return w, false
	}
	w, ok = wireOf(textOf(r))
	return w, ok && w.signed
}

// textOf is a row as one text, its cells as if commas had parted them.
func textOf(r table.Row) string {
	if len(r.Cells) == 1 {
		return r.Cells[0]
	}
	return strings.Join(slices.DeleteFunc(slices.Clone(r.Cells), func(c string) bool { return c == "" }), ", ")
}

// named takes the name of the device from the line right above, with what its brackets say of all wires below.
func (g *group) named(rows []table.Row) bool {
	const most = 7 // words (no source)
	g.at = g.first - 1
	for k := 0; k < 2 && g.at > 0 && titleline.IsRemark(textOf(rows[g.at])) && rows[g.at].Level == 0; k++ {
		g.at--
	}
	if g.first == 0 {
		return false
	}
	r := rows[g.at]
	text := strings.TrimSpace(strings.Trim(textOf(r), "*_ "))
	colon := strings.HasSuffix(text, ":")
	text = strings.Trim(strings.TrimRight(text, ": "), "*_ ")
	if r.Point && !colon || len(r.Cells) != 1 || text == "" || strings.HasSuffix(text, ".") || len(strings.Fields(text)) > most {
		return false
	}
	if r.Line+2+g.first-1-g.at < rows[g.first].Line {
		return false
	}
	if open := strings.Index(text, " ("); open > 0 && strings.HasSuffix(text, ")") {
		aside := strings.TrimSuffix(text[open+2:], ")")
		text = text[:open]
		if g.size, g.note = sizeIn(aside), aside; g.size == aside {
			g.note = ""
		}
	}
	g.device, g.note = cutCount(text, g.note)
	return point.IsShortName(text) && !name.IsGeneric(text) && !point.IsColour(text)
}

// cutCount takes the count of its pins off the name of a plug, "Trailer cable 7 pin": it could be read as a cavity.
func cutCount(text, note string) (device, more string) {
	words := strings.Fields(text)
	for n := 1; n < 3 && n < len(words); n++ {
		count := strings.Join(words[len(words)-n:], " ")
		if k, err := strconv.Atoi(name.Words(table.Fold(count) + " -")[0]); err == nil && plugwires.CountsPins(count, k) {
			return strings.Join(words[:len(words)-n], " "), value.JoinNonEmpty("; ", note, count)
		}
	}
	return text, note
}

// sizeIn is the size that a few words say of all wires, "all 1.5 mm²"; "" where they say anything else.
func sizeIn(text string) string {
	words := strings.Fields(text)
	for len(words) > 1 && slices.Contains([]string{"all", "wires", "wire", "alle", "tous", "en", "todos", "tutti", "allemaal", "alla"},
		table.Fold(words[0])) {
		words = words[1:]
	}
	if bare := strings.Join(words, " "); point.IsSize(bare) {
		return bare
	}
	return ""
}

// areWires reports whether some groups are wires and no colours of anything else: a ground or the places where they go say so.
func areWires(all []group) bool {
	n, far, grounds, nets, legends, striped := 0, 0, 0, 0, 0, 0
	for _, g := range all {
		if isRule(g.device) {
			return false
		}
		if plugwires.LookedUp(g.device) == plugwires.Legend {
			legends++
		}
		for _, w := range g.wires {
			n++
			if w.to != "" {
				far++
			}
			if c, _ := value.ParseColour(w.colour, ""); len(c) > 1 {
				striped++
			}
			ground := plugwires.IsGroundLike(w.signal) || isGround(w.to)
			if ground {
				grounds++
			}
			if ground || isNet(w.signal) || isNet(w.to) {
				nets++
			}
		}
	}
	if len(all) == 0 || n < leastLines || n < 2*len(all) && far == 0 {
		return false
	}
	if legends == len(all) && grounds == 0 && (striped == 0 || far == 0) {
		return false
	}
	if far = 2 * far; far >= n && (grounds > 0 || striped > 0 || 2*nets > n) {
		return true
	}
	return nets > 1 && (grounds > 0 || striped > 0 && 3*nets >= n)
}

// isRule reports whether a heading is of the colours of all wires, or of paint, and of no device.
func isRule(heading string) bool {
	of := plugwires.LookedUp(heading)
	return of != "" && of != plugwires.Legend
}

const leastLines = 2 // that tell a wire (no source)

// spread puts the cells of the wires in the place of their rows, and headings above those of the first device; the line that names another
// right behind is dropped, as each row below says it.
func spread(t *table.Table, all []group) (rows []table.Row, told map[int][]int) {
	rows, told = make([]table.Row, 0, len(t.Rows)+len(all)), map[int][]int{}
	at := 0
	for i, g := range all {
		rows = append(rows, t.Rows[at:g.at]...)
		rows = append(rows, t.Rows[g.at+1:g.first]...)
		if i == 0 || at < g.first-1 {
			rows = append(rows, table.Row{Line: t.Rows[g.at].Line, Cells: slices.Clone(heads), First: true, Ruled: t.Marked})
		}
		for k, w := range g.wires {
			rows = w.addTo(rows, t.Rows[g.first+k], g)
			told[t.Rows[g.first+k].Line] = []int{t.Rows[g.at].Line}
		}
		at = g.first + g.n
	}
	return append(rows, t.Rows[at:]...), told
}

// addTo adds the row of a wire, as often as there are such wires.
func (w wire) addTo(rows []table.Row, r table.Row, g group) []table.Row {
	r.First, r.Prose, r.Point, r.Deep, r.Gap, r.Drawn, r.Level = false, false, false, 0, nil, nil, 0
	size, note := g.size, g.note
	if w.size != "" {
		size = w.size
	}
	if w.note != "" {
		note = value.JoinNonEmpty("; ", note, w.note)
	}
	if strings.Contains(w.colour, ",") || strings.Contains(w.colour, " on ") {
		note = value.JoinNonEmpty("; ", note, w.colour) // a wording that is read in another order, as it stands
	}
	from, signal := g.device, w.signal
	if w.from != "" {
		from = withPole(w.from)
	}
	if signal == "-" || signal == "−" || signal == "–" {
		signal = "minus" // and no sign for nothing
	}
	r.Cells = []string{from, w.pin, withPole(w.to), signal, w.colour, size, note}
	for range max(1, w.times) {
		rows = append(rows, r)
	}
	return rows
}

// withPole writes the pole behind a device as its cavity, "horn (−)".
func withPole(end string) string {
	for _, pole := range []string{"+", "-", "−", "–"} {
		if of, ok := strings.CutSuffix(end, " ("+pole+")"); ok {
			end = of + " " + pole
		}
	}
	return point.WithPole(strings.Replace(end, " –", " −", 1))
}
