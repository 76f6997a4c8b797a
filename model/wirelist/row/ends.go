package row

import (
	"slices"
	"strings"

	"contralay/model/catalogue"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// betweenEnds makes an item for each pair of ends: as many on either side, or one on one of
// them, which then has a wire to each of the others.
func betweenEnds(im *draft.Importer, it draft.Item, froms, tos []draft.End, place table.Place) {
	m, n := len(froms), len(tos)
	if m > 1 && n > 1 && m != n {
		im.Say(report.Warn, "cavities do not pair", place, endsText(froms)+" to "+endsText(tos), "kept in the note, no ends made")
		it.Notes = append(it.Notes, "from "+endsText(froms)+" to "+endsText(tos))
		froms, tos, m, n = nil, nil, 0, 0
	}
	if m > 1 || n > 1 {
		did := "a wire for each"
		if m == 1 || n == 1 {
			did = "a wire to each, together in the one cavity"
		}
		im.Say(report.Note, "several cavities in one cell", place, value.JoinNonEmpty(" to ", endsText(froms), endsText(tos)), did)
	}
	for k := range max(m, n, 1) {
		one := it
		one.Notes, one.With = slices.Clone(it.Notes), slices.Clone(it.With)
		if m > 0 {
			one.From = froms[min(k, m-1)]
		}
		if n > 0 {
			one.To = tos[min(k, n-1)]
		}
		if colours := it.Each; len(colours) > 1 && len(colours) == max(m, n) {
			one.Colour = colours[k]
		}
		im.Count++
		one.Order = im.Count
		im.Items = append(im.Items, &one)
	}
}

// endsText names ends as the list does: the connector once.
func endsText(all []draft.End) string {
	s, last := "", ""
	for k, e := range all {
		of := e.Text
		if e.Term != nil {
			of = e.Term.ID
		}
		if k > 0 {
			s += ", "
		}
		if of != last || k == 0 {
			s += of
			if e.Pin != "" && of != "" {
				s += ":"
			}
		}
		s, last = s+e.Pin, of
	}
	return s
}

// endsOf reads the cell or the two cells of one side: the ends that stand there, each of
// one cavity. The termination is made later, when all lists are read and it shows which
// names are splices.
func endsOf(im *draft.Importer, b *shape.Block, cells []string, f, pin name.Field, it *draft.Item,
	column func(int) table.Place) ([]draft.End, int) {
	text, col := b.CellAt(cells, f)
	p, pinCol := b.CellAt(cells, pin)
	if col < 0 {
		col = pinCol
	}
	for _, cell := range []*string{&text, &p} {
		if value.IsMangled(*cell) {
			it.Notes = append(it.Notes, "end: "+*cell)
			im.Say(report.Warn, "what a spreadsheet made of an end", column(max(col, 0)), *cell,
				"kept in the note, no end made; it does so with 1-2 and 1E2")
			return nil, col
		}
	}
	if text == "" && value.IsNothing(p) && pinCol >= 0 && b.Cols[pinCol].Of != "" && !b.IsPole(pinCol) {
		p = ""
	}
	if pinCol >= 0 && b.Cols[pinCol].Of != "" && text == "" && p != "" {
		switch {
		case pads.IsAny(p):
			it.Notes = append(it.Notes, "cavity at "+b.Cols[pinCol].Of+": "+p)
			im.Say(report.Warn, "any cavity will do", column(pinCol), p, "kept in the note, no end made")
			return nil, pinCol
		case pads.SaysOpen(b.Rows, p, pinCol):
			if it.State == name.Used {
				it.State = name.Blank
			}
			return nil, pinCol
		}
	}
	// "NO" is the contact that is normally open, beside "NC" and "COM".
	if text != "" && p != "" && (isNone(p) && p != "NO" || value.IsNothing(p) && (len(p) > 1 || !b.IsPole(pinCol)) || name.IsUnknown(p)) {
		if !value.IsNothing(p) {
			it.Notes = append(it.Notes, "cavity at "+text+": "+p)
		}
		p = "" // its cavity is not known
	}
	if text == "" && p == "" {
		return nil, col
	}
	if p == "" && words.BeginsOpen(text) {
		it.Notes = append(it.Notes, text)
		im.Say(report.Warn, "text behind the word for no connection", column(max(col, 0)), text, "kept in the note, no end made")
		return nil, col
	}
	if p == "" {
		if several := words.Siblings(text); several != nil {
			return draft.EndsAt(several), col
		}
	}
	if p == "" || text == "" || strings.Contains(text, ":") {
		cell, behind := name.RemarkBehind(value.JoinNonEmpty("", text, map[bool]string{true: p}[text == ""]))
		both, more := name.SplitEnds(cell)
		if behind != "" {
			it.Notes = append(it.Notes, "at "+cell+": "+behind)
			im.Say(report.Note, "text behind a cavity", column(max(col, 0)), behind, "kept in the note")
			if text != "" {
				text = cell
			} else {
				p = cell
			}
		}
		if more != "" && len(both) > 0 {
			it.Notes = append(it.Notes, "at "+both[len(both)-1].Connector+":"+both[len(both)-1].Pin+": "+more)
			im.Say(report.Note, "text behind a cavity", column(max(col, 0)), more, "kept in the note")
		}
		var all []draft.End
		for _, e := range both {
			for _, q := range spreadPin(im, b, e.Pin, nil, column(max(col, 0))) {
				all = append(all, draft.End{Text: e.Connector, Pin: q})
			}
		}
		// The cavity may stand in both cells.
		if len(all) > 0 && (p == "" || text == "" || len(all) == 1 && all[0].Pin == p) {
			return all, col
		}
	}
	e := draft.End{Text: text, Pin: p}
	switch {
	case text == "" && pinCol >= 0 && b.Cols[pinCol].Of != "":
		e.Text = b.Cols[pinCol].Of
	case text == "":
		if c, q, ok := name.SplitEnd(p); ok {
			e.Text, e.Pin = c, q
		}
	case p == "" && !b.Has(pin):
		if c, q, ok := name.SplitEnd(text); ok {
			e.Text, e.Pin = c, q
		}
	}
	var all []draft.End
	if pinCol >= 0 && b.Cols[pinCol].Slashed {
		return []draft.End{e}, col
	}
	for _, q := range name.SplitPins(e.Pin) {
		for _, one := range spreadPin(im, b, q, nil, column(max(pinCol, col, 0))) {
			all = append(all, draft.End{Text: e.Text, Pin: one})
		}
	}
	if all == nil {
		all = []draft.End{e}
	}
	return all, col
}

// spreadPin gives the cavities of a range, where it is one; else the name itself, and a
// warning where it could be a range.
func spreadPin(im *draft.Importer, b *shape.Block, pin string, ins *catalogue.Insert, place table.Place) []string {
	all, sure, ok := name.Spread(pin, ins)
	if ok && (sure || b.Ranges) && !slices.ContainsFunc(all, func(p string) bool { return b.Named[p] }) {
		return all
	}
	if name.LooksLikeRange(pin) && !(b.Has(name.FieldFrom) && words.IsPlugPin(pin)) {
		im.Say(report.Warn, "could be a range of cavities", place, pin, "read as the name of one")
	}
	return []string{pin}
}
