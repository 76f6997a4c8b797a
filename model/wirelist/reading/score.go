package reading

import (
	"contralay/model/wirelist/bothends"
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/doubt"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/outputs"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// finish gives the columns their sides, looks at what they say together, and scores it. ok is false where
// no wire could hang on the rows.
func (l *look) finish(called string, cols []shape.Column) (Reading, bool) {
	l.Heads.Sides(cols)
	bothends.ApartEnds(cols, l.Prof, l.Src.Rows)
	l.endsBelow(cols)
	bothends.Finish(cols, l.Prof, l.Src.Rows, slices.Concat(l.Src.Titles, l.Src.Head[:max(len(l.Src.Head)-1, 0)]))
	b := l.Block(cols)
	l.Heads.Settle(b)
	l.inCells(b)
	l.groups(b)
	l.whichDevice(b)
	r := Reading{Kind: called, Wires: true, Block: b}
	if r.Kind == "" {
		r.Kind = b.Kind()
	}
	why, ok := l.hangs(b)
	if !ok {
		return r, false
	}
	share, columns := l.explained(b)
	if l.empty() {
		share = 0.1 // more than a text
	}
	r.Score, r.Because = share, append(why, columns)
	r.Doubts = doubt.Of(doubt.Reading{Block: b, Rows: l.Src.Rows, Profiles: l.Prof, Words: l.Heads.Words, Lang: l.Lang})
	return r, true
}

// hangs reports whether a wire can hang on the rows: a cavity and something beside it, two ends and
// something that only wires have, or an id and a value of a wire; and what says so.
func (l *look) hangs(b *shape.Block) (why []string, ok bool) {
	if l.Heads.NoEnds && b.Has(name.FieldSignal, name.FieldWire) {
		return []string{"wires are compared by their names"}, true
	}
	if l.empty() {
		return []string{"headings of wires, and no row below them"}, len(l.Src.Head) > 0 && l.Heads.IsHead(l.Src.Head[len(l.Src.Head)-1])
	}
	col := func(fields ...name.Field) int { return l.Holds(b.Cols, fields...) }
	value := col(name.FieldGauge, name.FieldColour, name.FieldSpec, name.FieldCurrent, name.FieldFuse, name.FieldCable, name.FieldContact)
	switch {
	case b.Plug != "":
		return []string{"colours of the wires of one connector"}, true
	case b.Has(name.FieldDevicePin):
		return []string{"cavities below the names of devices"}, true
	case b.Has(name.FieldPin) && b.IsPinTable():
		return l.pinsHang(b)
	case b.Has(name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun):
		ends := col(name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun)
		if ends < 0 {
			return []string{"no cell says an end"}, l.listed(b, value) || l.saysWires()
		}
		if p := &l.Prof[ends]; !b.Has(name.FieldFrom, name.FieldTo, name.FieldRun) && !b.Cols[ends].Given && b.Cols[ends].Of == "" &&
			!p.Most(p.Cavities+p.Ends) {
			return nil, false // "1 Pin", "2 Pin": counts of plugs
		}
		if l.kindByWords() == "fuses" && col(name.FieldFrom, name.FieldFromPin, name.FieldToPin, name.FieldGauge, name.FieldColour) < 0 {
			return nil, false // what each fuse feeds
		}
		if value < 0 && l.tellsConnectors() && col(name.FieldFromPin, name.FieldToPin, name.FieldSignal, name.FieldLength) < 0 {
			return nil, false
		}
		if l.isDistances(b, value) || !l.endsOfWires(b, value) {
			return nil, false
		}
		return []string{"ends in " + shape.At(b.Cols, ends)}, true
	}
	return []string{"ids"}, l.listed(b, value)
}

// tellsConnectors reports whether the headings are those of a list of connectors: how many ways each has, or its device and its
// housing.
//
//	Ref | Device   | Ways | Housing
//	J4  | Wet pump | 3    | KM-3S
func (l *look) tellsConnectors() bool {
	named := 0
	for i, c := range l.Cols {
		if c.Field == name.FieldConnector && i < len(l.Prof) && l.Prof[i].Filled > 0 {
			named++
		}
	}
	return named > 1 || l.kindByWords() == "connectors"
}

// saysWires reports whether the headings are those of a list of wires and of nothing else, whatever
// stands below them.
func (l *look) saysWires() bool {
	n := len(l.Src.Head)
	return n > 0 && l.Heads.IsHead(l.Src.Head[n-1]) && l.kindByWords() == ""
}

// empty reports whether no column holds anything.
func (l *look) empty() bool {
	return !slices.ContainsFunc(l.Prof, func(p column.Profile) bool { return p.Filled > 0 })
}

// listed reports whether rows without ends are wires by their ids: the heading or the cells say ids, and a value
// of a wire stands beside them.
func (l *look) listed(b *shape.Block, value int) bool {
	id := l.Holds(b.Cols, name.FieldWire)
	if id < 0 {
		return false
	}
	if b.Cols[id].Given {
		return true
	}
	p := &l.Prof[id]
	return p.Most(p.Ids) && p.Unique() && l.Holds(b.Cols, name.FieldGauge, name.FieldColour, name.FieldSpec, name.FieldCable) >= 0 &&
		l.kindByWords() != "fuses"
}

// pinsHang reports whether the cells of the cavities are some, and something stands beside them.
func (l *look) pinsHang(b *shape.Block) (why []string, ok bool) {
	pin := l.Holds(b.Cols, name.FieldPin)
	if pin < 0 {
		return []string{"no cell below " + shape.At(b.Cols, l.Find(b.Cols, name.FieldPin))}, l.saysWires()
	}
	p, c, beside := &l.Prof[pin], &b.Cols[pin], 0
	for i, c := range b.Cols {
		switch c.Field {
		case name.FieldSignal, name.FieldWire, name.FieldTo, name.FieldToPin, name.FieldColour, name.FieldGauge, name.FieldSpec,
			name.FieldCable,
			name.FieldNote, name.FieldConnector, name.FieldLength, name.FieldCurrent, name.FieldFuse:
			if i != pin {
				beside++
			}
		case name.FieldKeep:
			if i != pin && i < len(l.Prof) && l.Prof[i].Filled > 0 && len(b.Cols) < 4 {
				beside++ // "Pin | Depth string"
			}
		}
	}
	if c.Given || c.Guessed {
		return []string{"cavities in " + shape.At(b.Cols, pin)}, true
	}
	if weak := l.isWeakPin(b, pin); weak && l.values(b) == 0 && !l.saysPins() && !outputs.Are(l.Src.Rows, pin) ||
		weak && !p.Most(p.Cavities+p.Ends) && !(p.Unique() && p.Most(l.ShortNames(pin))) {
		return nil, false
	}
	if beside == 0 || 2*p.Prose > p.Filled || l.kindByWords() == "parts" && !p.Most(p.Cavities+p.Ends) {
		return nil, false
	}
	return []string{"cavities in " + shape.At(b.Cols, pin)}, true
}

// isWeakPin reports whether the heading of the cavities is a word of many other tables too: a number, a port, a
// channel, a device.
func (l *look) isWeakPin(b *shape.Block, pin int) bool {
	c := &b.Cols[pin]
	if l.Src.Listed || len(l.Src.Head) == 0 || c.InCell {
		return false
	}
	w, last := name.Words(table.Fold(c.Head)), ""
	if len(w) > 0 {
		last = w[len(w)-1]
	}
	switch last {
	case "terminal", "terminals", "contact", "pad", "klemme", "borne", "morsetto", "zacisk", "svorka":
		// Torques and part numbers stand beside terminals, too: the name of a net must.
		return l.Holds(b.Cols, name.FieldSignal) < 0 || !b.Cols[l.Holds(b.Cols, name.FieldSignal)].Known()
	case "port", "channel", "gpio", "output", "screw", "clamp", "position", "no", "number", "nr":
		return len(w) < 2 || l.Heads.Words[strings.Join(w, " ")].Field == name.FieldNumber
	}
	m := l.Heads.Words[strings.Join(w, " ")]
	return m.Field != name.FieldPin && l.Heads.Words[last].Field != name.FieldPin
}

// values counts the columns that hold what only wires have: colours, sizes, where they go, their cable, their id.
func (l *look) values(b *shape.Block) (n int) {
	for i, c := range b.Cols {
		if i >= len(l.Prof) || l.Prof[i].Filled == 0 {
			continue
		}
		p := &l.Prof[i]
		switch c.Field {
		case name.FieldColour:
			if p.Colours > 0 {
				n++
			}
		case name.FieldGauge:
			if max(p.Sizes, p.Sized, p.Specs) > 0 {
				n++
			}
		case name.FieldTo, name.FieldToPin, name.FieldCable, name.FieldFrom, name.FieldFromPin, name.FieldStripe:
			n++
		case name.FieldWire:
			if p.Most(p.Ids) {
				n++
			}
		case name.FieldSpec:
			if p.Most(p.Specs) {
				n++
			}
		}
	}
	return n
}

// saysPins reports whether a title says that the cavities of a connector follow.
func (l *look) saysPins() bool {
	titles := slices.Clone(l.Src.Titles)
	if n := len(l.Src.Path); n > 0 {
		titles = append(titles, l.Src.Path[n-1])
	}
	for _, t := range titles {
		_, text := t.Filled()
		all := name.Words(table.Fold(text))
		if name.SaysConnector(text) || name.IsDesignator(text) && strings.ToUpper(text) == text || len(all) < 3 && words.HeadsUnit(all) ||
			slices.ContainsFunc(all, func(w string) bool {
				return name.IsPinTitle(w) || words.IsOutput(strings.TrimSuffix(w, "s")) && words.HeadsUnit(all)
			}) {
			return true
		}
	}
	return false
}

// explained is the share of what stands in the block that its columns explain, 0 to 1, and says it.
func (l *look) explained(b *shape.Block) (share float64, says string) {
	var sum, whole float64
	var cols []string
	for i, c := range b.Cols {
		if i >= len(l.Prof) || l.Prof[i].Filled == 0 {
			continue
		}
		w := c.Field.Weight()
		fit := l.fit(i, c.Field)
		if c.Head != "" && !c.Known() && c.Of == "" && !c.Given {
			fit *= 0.8 // the cells alone say it
		}
		sum += w * fit
		whole += max(w, 1)
		if c.Field != name.FieldKeep {
			says := shape.At(b.Cols, i)
			if !strings.EqualFold(says, string(c.Field)) {
				says += " is " + string(c.Field)
			}
			cols = append(cols, says)
		}
	}
	if whole == 0 {
		return 0, ""
	}
	return sum / whole, strings.Join(cols, ", ")
}

// fit is the share of the cells of a column that are what a field holds.
func (l *look) fit(i int, f name.Field) float64 {
	p := &l.Prof[i]
	of := func(n int) float64 { return float64(n) / float64(p.Filled) }
	switch f {
	case name.FieldToPin, name.FieldPin, name.FieldVia, name.FieldFromPin:
		if f == name.FieldToPin && areCavities(l.Src.Rows, i) {
			return 1
		}
		return 0.5 + 0.5*of(p.Cavities)
	case name.FieldDevicePin:
		return 0.5 + 0.5*of(min(p.Filled, max(p.Cavities, l.ShortNames(i))))
	case name.FieldGauge:
		return of(max(p.Sizes, p.Specs, p.Sized))
	case name.FieldColour:
		return 0.3 + 0.7*of(p.Colours)
	}
	return 1
}

// isDistances reports whether rows of two ends say no more than how far it is between places: no cavity, no
// id, no name, no value of a wire.
func (l *look) isDistances(b *shape.Block, value int) bool {
	if b.OnlyLengths() {
		return true
	}
	if value >= 0 || l.Holds(b.Cols, name.FieldWire, name.FieldSignal, name.FieldFromPin, name.FieldToPin, name.FieldRun,
		name.FieldStripe) >= 0 {
		return false
	}
	for _, f := range []name.Field{name.FieldFrom, name.FieldTo} {
		if i := l.Holds(b.Cols, f); i >= 0 && (b.Cols[i].Given || column.CavitiesIn(l.Src.Rows, i) > 0) {
			return false
		}
	}
	for i, c := range b.Cols {
		if c.Field == name.FieldLength || name.IsDistance(c.Head) && i < len(l.Prof) && l.Prof[i].Filled > 0 {
			return true
		}
	}
	return l.kindByWords() == "distances"
}

// endsOfWires reports whether something beside a from and a to is of wires: a value or the heading of a size and of a colour that
// nobody has filled in yet, an id, a cavity, or a name below a heading of nets. People and months have a from and a to as well.
func (l *look) endsOfWires(b *shape.Block, value int) bool {
	if b.Has(name.FieldGauge) && b.Has(name.FieldColour, name.FieldSpec) {
		return true
	}
	if value >= 0 || l.Holds(b.Cols, name.FieldWire, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldStripe) >= 0 {
		return true
	}
	for i, c := range b.Cols {
		if i >= len(l.Prof) || l.Prof[i].Filled == 0 {
			continue
		}
		switch w := name.Words(table.Fold(c.Head)); {
		case c.Given:
			return true
		case c.Field == name.FieldSignal && c.Known() && !(len(w) == 1 && (w[0] == "name" || w[0] == "use" || w[0] == "nom" ||
			w[0] == "label")):
			return true
		case (c.Field == name.FieldFrom || c.Field == name.FieldTo) && (column.CavitiesIn(l.Src.Rows, i) > 0 || words.SaysEnd(c.Head)):
			return true
		}
	}
	return len(b.Cols) == 2 && l.saysPins()
}
