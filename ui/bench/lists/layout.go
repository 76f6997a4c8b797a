package lists

import (
	"maps"
	"slices"
	"strings"

	"contralay/model/wirelist"
	"contralay/model/wirelist/shape"
	"contralay/ui/draw"
)

// layout is how wide each column of a table stands on the screen.
type layout struct {
	cols    []int // the columns that have room: none that is empty
	wide    []int // of each of them
	becomes int   // cells for what a row becomes
	ascii   bool
}

// leadWide is the room of a row's number, before its cells.
const leadWide = 6

// layoutOf gives each column the room that it needs, and where there is too little, takes it off the widest. What has no room even so
// stands in the row's detail.
func layoutOf(f *wirelist.Found, w int, ascii bool) layout {
	const most, least, looked = 18, 4, 200
	l := layout{becomes: max(8, w/3), ascii: ascii}
	room := w - leadWide - l.becomes
	wide := map[int]int{}
	need := func(i int, text string) {
		if text != "" {
			wide[i] = max(wide[i], least, min(most, draw.Width(text)))
		}
	}
	for _, r := range f.All[:min(len(f.All), looked)] {
		if !shape.IsText(r) {
			for i, c := range r.Cells {
				need(i, c)
			}
		}
	}
	for i, c := range f.Reading().Block.Cols {
		if wide[i] > 0 {
			need(i, string(c.Field))
		}
	}
	for _, i := range slices.Sorted(maps.Keys(wide)) {
		l.cols, l.wide = append(l.cols, i), append(l.wide, wide[i])
	}
	total := func() (n int) {
		for _, one := range l.wide {
			n += one + 1
		}
		return n
	}
	for total() > room {
		k := slices.Index(l.wide, slices.Max(l.wide))
		if l.wide[k] > least {
			l.wide[k]--
		} else {
			l.wide = l.wide[:len(l.wide)-1]
		}
		if len(l.wide) == 0 {
			break
		}
	}
	return l
}

// line sets cells in their columns, with what the row becomes behind them.
func (l layout) line(lead string, cells []string, becomes string) string {
	var b strings.Builder
	b.WriteString(draw.Fit(lead, leadWide, l.ascii))
	if text := slices.DeleteFunc(slices.Clone(cells), func(c string) bool { return c == "" }); len(text) == 1 && len(l.wide) > 1 {
		room := 0 // a text alone takes the room of all
		for _, wide := range l.wide {
			room += wide + 1
		}
		return b.String() + draw.Fit(text[0], room-1, l.ascii) + " " + becomes
	}
	for k, wide := range l.wide {
		c := ""
		if i := l.cols[k]; i < len(cells) {
			c = cells[i]
		}
		b.WriteString(draw.Fit(c, wide, l.ascii) + " ")
	}
	return b.String() + becomes
}
