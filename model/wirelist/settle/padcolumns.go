package settle

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/table"
)

// padColumn is a column that is headed by a device and a word for what its pads are called by.
type padColumn struct {
	i      int
	device string
	kind   int // otherPads, chipPads or itsPads
}

const (
	otherPads = iota + 1 // "Gauge label", "Hub header": pads, where its cells are short names
	chipPads             // "Hub GPIO": what the maker of the chip calls the pad; "Pin gauge"
	itsPads              // "Hub pin"
)

// padColumns takes the columns of two devices for the two ends, where the heading of the one has no word for a cavity, and takes
// what a chip calls a cavity off those of its board.
//
//	Gauge label | Hub header pin | Hub GPIO        Pin gauge | Hub pin
//	SDA         | 3              | GP2             1 GND     | hub-gnd (6)
func (l *Look) padColumns() {
	if l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldDevicePin) {
		return
	}
	var best []padColumn // of each device
	changed := false
	for i := range l.Cols {
		p := l.padColumn(i)
		if p.kind == 0 {
			continue
		}
		k := slices.IndexFunc(best, func(o padColumn) bool { return pads.SameDevice(o.device, p.device) })
		if k < 0 {
			best = append(best, p)
			continue
		}
		weaker := p
		if p.kind > best[k].kind {
			weaker, best[k] = best[k], p
		}
		if weaker.kind == chipPads {
			l.Cols[weaker.i].Field, l.Cols[weaker.i].Of = name.FieldKeep, ""
			l.Cols[weaker.i].Alias, changed = true, true
		}
	}
	for i := range l.Cols {
		c := &l.Cols[i]
		w := name.Words(table.Fold(c.Head))
		if len(best) == 2 && !c.Given && c.Field == name.FieldKeep && len(w) == 2 && pads.IsPlacing(w[0]) &&
			l.Heads.Words[w[1]].Field == name.FieldPin {
			c.Alias = true // "Physical pin" beside "Hub pin"
		}
	}
	if len(best) != 2 || best[0].kind < chipPads && best[1].kind < chipPads ||
		!changed && best[0].kind == itsPads && best[1].kind == itsPads {
		return
	}
	for k, p := range best {
		c := &l.Cols[p.i]
		switch sides := [][2]name.Field{{name.FieldFrom, name.FieldFromPin}, {name.FieldTo, name.FieldToPin}}[k]; {
		case l.AllParted(p.i) && l.FewConnectors(p.i):
			c.Field, c.Of = sides[0], "" // "P8_7"
		default:
			c.Field, c.Of = sides[1], p.device
		}
	}
	for i := range l.Cols {
		c := &l.Cols[i]
		w := name.Words(table.Fold(c.Head))
		switch {
		case c.Given || len(w) == 0:
		case c.Field == name.FieldPin && pads.IsChipWord(w[0]):
			c.Field, c.Alias = name.FieldKeep, true
		case c.Field == name.FieldKeep && pads.IsNameWord(w[len(w)-1]) && !c.Alias && !l.Has(l.Cols, name.FieldSignal):
			c.Field = name.FieldSignal
		}
	}
}

// padColumn reads the heading and the cells of a column; kind is 0 where it is none.
func (l *Look) padColumn(i int) padColumn {
	c, p := &l.Cols[i], &l.Prof[i]
	head := strings.Fields(strings.TrimSpace(name.WithoutBrackets(c.Head)))
	for len(head) > 2 && pads.IsNumberWord(table.Fold(strings.Trim(head[len(head)-1], "."))) {
		head = head[:len(head)-1]
	}
	if c.Given || slices.ContainsFunc(name.Words(table.Fold(c.Head)), pads.IsSoftware) || len(head) < 2 ||
		len(head) > 5 || p.Filled < 2 || c.Field == name.FieldColour || c.Field == name.FieldGauge {
		return padColumn{}
	}
	first, last := table.Fold(head[0]), table.Fold(head[len(head)-1])
	of := padColumn{i: i, device: strings.Join(head[:len(head)-1], " ")}
	if pads.IsNoDevice(first) || strings.Trim(first, "0123456789") == "" {
		rest := table.Fold(strings.Join(head[1:], " "))
		if (first == "pin" || first == "pins") && !c.Known() && l.Heads.Words[rest].Field == "" && !name.IsOtherHead(rest) &&
			!name.IsRemark(name.Words(rest)) && l.pads(i) > 0 && !(i > 0 && l.Heads.IsPinOf(c.Head, l.Cols[i-1].Head)) {
			return padColumn{i, strings.Join(head[1:], " "), chipPads}
		}
		return padColumn{}
	}
	switch f := l.Heads.Words[last].Field; {
	case f == name.FieldPin && pads.IsChipWord(last):
		of.kind = chipPads
	case f == name.FieldPin:
		of.kind = itsPads
	case c.Known() && c.Field != name.FieldConnector:
	case pads.IsNameWord(last) && pads.AreNames(l.Src.Rows, i):
		of.kind = otherPads
	case f == name.FieldConnector && (l.AllParted(i) && l.FewConnectors(i) || pads.AreNames(l.Src.Rows, i) && p.Unique() &&
		2*p.Filled > column.Data(l.Src.Rows)): // a plug that is named once has its cavities beside it
		of.kind, of.device = otherPads, strings.Join(head, " ")
	}
	return of
}

// numbered finds the columns of cavities whose cells say the number and the name of each.
func (l *Look) numbered() {
	for i := range l.Cols {
		if c := &l.Cols[i]; !c.Given && slices.Contains([]name.Field{name.FieldPin, name.FieldFromPin, name.FieldToPin}, c.Field) {
			c.Numbered = pads.AreNumbered(l.Src.Rows, i)
		}
	}
}

// MostPad is how long the name of a pad of a board may be, "5V OUT", in bytes (no source).
const MostPad = 6
