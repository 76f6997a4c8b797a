package wirelist

import (
	"slices"
	"strings"

	"contralay/model/catalogue"
)

// between makes an item for each pair of ends: as many on either side, or one on one of
// them, which then has a wire to each of the others.
func (im *importer) between(it item, froms, tos []end, place Place) {
	m, n := len(froms), len(tos)
	if m > 1 && n > 1 && m != n {
		im.say(Warn, "cavities do not pair", place, endsText(froms)+" to "+endsText(tos), "kept in the note, no ends made")
		it.notes = append(it.notes, "from "+endsText(froms)+" to "+endsText(tos))
		froms, tos, m, n = nil, nil, 0, 0
	}
	if m > 1 || n > 1 {
		did := "a wire for each"
		if m == 1 || n == 1 {
			did = "a wire to each, together in the one cavity"
		}
		im.say(Note, "several cavities in one cell", place, joinNonEmpty(" to ", endsText(froms), endsText(tos)), did)
	}
	for k := range max(m, n, 1) {
		one := it
		one.notes, one.with = slices.Clone(it.notes), slices.Clone(it.with)
		if m > 0 {
			one.from = froms[min(k, m-1)]
		}
		if n > 0 {
			one.to = tos[min(k, n-1)]
		}
		im.count++
		one.order = im.count
		im.items = append(im.items, &one)
	}
}

// endsText names ends as the list does: the connector once.
func endsText(all []end) string {
	s, last := "", ""
	for k, e := range all {
		name := e.text
		if e.term != nil {
			name = e.term.ID
		}
		if k > 0 {
			s += ", "
		}
		if name != last || k == 0 {
			s += name
			if e.pin != "" && name != "" {
				s += ":"
			}
		}
		s, last = s+e.pin, name
	}
	return s
}

// endsOf reads the cell or the two cells of one side: the ends that stand there, each of
// one cavity. The termination is made later, when all lists are read and it shows which
// names are splices.
func (im *importer) endsOf(b *block, cells []string, f, pin Field, it *item, column func(int) Place) ([]end, int) {
	text, col := b.cellAt(cells, f)
	p, pinCol := b.cellAt(cells, pin)
	if col < 0 {
		col = pinCol
	}
	for _, cell := range []*string{&text, &p} {
		if isMangled(*cell) {
			it.notes = append(it.notes, "end: "+*cell)
			im.say(Warn, "what a spreadsheet made of an end", column(max(col, 0)), *cell, "kept in the note, no end made; it does so with 1-2 and 1E2")
			return nil, col
		}
	}
	if text != "" && p != "" && (isNone(p) || isNothing(p) && len(p) > 1 || isUnknown(p)) {
		if !isNothing(p) {
			it.notes = append(it.notes, "cavity at "+text+": "+p)
		}
		p = "" // its cavity is not known
	}
	if text == "" && p == "" {
		return nil, col
	}
	if p == "" || text == "" || strings.Contains(text, ":") {
		cell, behind := remarkBehind(joinNonEmpty("", text, map[bool]string{true: p}[text == ""]))
		both, more := splitEnds(cell)
		if behind != "" {
			it.notes = append(it.notes, "at "+cell+": "+behind)
			im.say(Note, "text behind a cavity", column(max(col, 0)), behind, "kept in the note")
			if text != "" {
				text = cell
			} else {
				p = cell
			}
		}
		if more != "" && len(both) > 0 {
			it.notes = append(it.notes, "at "+both[len(both)-1].connector+":"+both[len(both)-1].pin+": "+more)
			im.say(Note, "text behind a cavity", column(max(col, 0)), more, "kept in the note")
		}
		var all []end
		for _, e := range both {
			for _, q := range im.spreadPin(b, e.pin, nil, column(max(col, 0))) {
				all = append(all, end{text: e.connector, pin: q})
			}
		}
		// The cavity may stand in both cells.
		if len(all) > 0 && (p == "" || text == "" || len(all) == 1 && all[0].pin == p) {
			return all, col
		}
	}
	e := end{text: text, pin: p}
	switch {
	case text == "" && pinCol >= 0 && b.cols[pinCol].of != "":
		e.text = b.cols[pinCol].of
	case text == "":
		if c, q, ok := splitEnd(p); ok {
			e.text, e.pin = c, q
		}
	case p == "" && !b.has(pin):
		if c, q, ok := splitEnd(text); ok {
			e.text, e.pin = c, q
		}
	}
	var all []end
	for _, q := range splitPins(e.pin) {
		for _, one := range im.spreadPin(b, q, nil, column(max(pinCol, col, 0))) {
			all = append(all, end{text: e.text, pin: one})
		}
	}
	if all == nil {
		all = []end{e}
	}
	return all, col
}

// spreadPin gives the cavities of a range, where it is one; else the name itself, and a
// warning where it could be a range.
func (im *importer) spreadPin(b *block, pin string, ins *catalogue.Insert, place Place) []string {
	all, sure, ok := spread(pin, ins)
	if ok && (sure || b.ranges) && !slices.ContainsFunc(all, func(p string) bool { return b.named[p] }) {
		return all
	}
	if looksLikeRange(pin) {
		im.say(Warn, "could be a range of cavities", place, pin, "read as the name of one")
	}
	return []string{pin}
}
