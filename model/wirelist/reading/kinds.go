package reading

import (
	"cmp"
	"slices"
	"strings"

	"contralay/model/wirelist/cableheads"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/placehead"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// through reads the cavities of a bulkhead between the two ends of each wire: the wire goes through.
//
//	# Cave rover, hatch plate
//	Pin | Circuit   | Gauge  | Source   | Destination
//	4   | Lamp left | 18 AWG | Dimmer 1 | Lamp L Pin 2
func through(l *look) []shape.Column {
	pin, from, to := l.Find(l.Cols, name.FieldPin), l.Holds(l.Cols, name.FieldFrom), l.Holds(l.Cols, name.FieldTo)
	if pin < 0 || from < 0 || to < 0 || pin > from || l.Has(l.Cols, name.FieldFromPin, name.FieldToPin, name.FieldConnector) ||
		!l.Prof[pin].Most(l.Prof[pin].Cavities) || !l.Prof[pin].Unique() || l.Titled() == "" {
		return nil
	}
	if first, _, _ := strings.Cut(l.Titled(), " "); cableheads.IsWord(first) {
		return nil // a wire is in its cable, and goes through no terminal of it
	}
	// Where one side is the connector of the table itself, the cavity is that side's.
	own := name.Key(l.Titled())
	for _, side := range []int{from, to} {
		if l.Prof[side].Distinct == 1 && l.Prof[side].Filled > 1 {
			return nil
		}
		for _, r := range l.Src.Rows {
			if side < len(r.Cells) && name.Key(r.Cells[side]) == own {
				return nil
			}
		}
	}
	if n := l.Prof[pin].Filled; 2*l.Prof[from].Filled < n || 2*l.Prof[to].Filled < n {
		return nil
	}
	cols := slices.Clone(l.Cols)
	cols[pin].Field = name.FieldVia
	_, cols[pin].Landed = words.TellsWall(l.Titled())
	return cols
}

// deviceColumn reads columns that are headed by a device and hold its cavities, where no column is
// headed as cavities: one, or one for either end.
//
//	Board | Signal | Color        Controller | Motor | Wire
//	D0    | A      | White        A          | U     | blue 12 AWG
func deviceColumn(l *look) []shape.Column {
	if len(l.Src.Head) == 0 || l.Has(l.Cols, name.FieldFromPin, name.FieldToPin, name.FieldFrom, name.FieldRun, name.FieldNumber) ||
		l.saysOfWires() < 1 {
		return nil
	}
	if slices.ContainsFunc(l.Cols, func(c shape.Column) bool { return l.EndsInPin(c.Head) }) {
		return nil // "PDP channel": the heading says it
	}
	var of []int
	for i, c := range l.Cols {
		p := &l.Prof[i]
		if i > 0 && l.Heads.IsPinOf(c.Head, l.Cols[i-1].Head) {
			return nil // so does "Pin strum." beside "Strumento"
		}
		headed := c.Field == name.FieldKeep || c.Field == name.FieldConnector || c.Field == name.FieldPin && c.Of == c.Head ||
			c.Field == name.FieldSignal && !c.Known()
		if !headed || c.Given || c.Known() && !c.Weak() && c.Field == name.FieldKeep || c.Head == "" || p.Filled < 2 || !p.Unique() ||
			p.Most(p.Colours) || name.IsOtherHead(c.Head) || l.standsInFew(i) ||
			name.IsRemark(name.Words(name.WithoutBrackets(table.Fold(c.Head)))) {
			continue
		}
		if (p.Most(p.Cavities) || p.Most(l.ShortNames(i))) && p.Cavities > 0 || column.Addresses(l.Src.Rows, i) {
			of = append(of, i)
		}
	}
	if len(of) == 2 && column.NumberBesideNames(l.Cols, l.Src.Rows, of[0], of[1]) {
		return nil // a number beside names is as likely an address
	}
	if len(of) == 0 || len(of) == 1 && l.saysOfWires() < 2 || len(of) > 2 || len(of) < 2 && l.Has(l.Cols, name.FieldPin) ||
		len(of) > 1 && l.Has(l.Cols, name.FieldTo) {
		return nil
	}
	if len(of) == 1 && column.CountsUp(l.Src.Rows, of[0]) && !l.HeadsDevice(of[0]) && l.Titled() != "" &&
		(!isPlugName(l.Cols[of[0]].Head) || name.SaysConnector(l.Titled())) {
		return nil // the title names the connector; the heading is a word for its cavities
	}
	if len(of) == 2 && !(devices{l, of}).saysDevice() {
		return nil // "have" and "need" of an inventory
	}
	cols := slices.Clone(l.Cols)
	for k, i := range of {
		cols[i].Field, cols[i].Of = []name.Field{name.FieldFromPin, name.FieldToPin}[k], cmp.Or(placehead.Of(cols[i].Head), cols[i].Head)
		if len(of) == 1 {
			l.legs(cols)
			cols[i].Field, cols[i].Vague = name.FieldPin, !l.HeadsDevice(i) && !name.IsDesignator(cols[i].Head)
			l.plugEnds(cols)
		}
	}
	return cols
}

// saysOfWires counts the columns that are headed as something of a wire.
func (l *look) saysOfWires() (n int) {
	for i, c := range l.Cols {
		switch c.Field {
		case name.FieldSignal, name.FieldColour, name.FieldGauge, name.FieldTo:
			if l.Prof[i].Filled > 0 && (c.Field != name.FieldSignal || c.Known()) {
				n++
			}
		}
	}
	return n
}

// endsByCells reads two columns of ends, a connector and a cavity in each cell, whatever they are headed, and
// two columns that say where a wire is terminated.
//
//	Przewód | Od            | Do        |       Wire | Termination at stern | Termination at capstan
//	1       | Skrzynka:1    | Światło:A |       C+   | Eyelet on plus post  | Eyelet on motor post 1
func endsByCells(l *look) []shape.Column {
	if l.Src.Runs || l.Has(l.Cols, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldRun) {
		return nil
	}
	var of []int
	for i, c := range l.Cols {
		if p := &l.Prof[i]; c.Field == name.FieldKeep && !c.Given && p.Filled > 0 && (p.Most(p.Ends) || words.SaysEnd(c.Head)) {
			of = append(of, i)
		}
	}
	if len(of) != 2 {
		return nil
	}
	cols := slices.Clone(l.Cols)
	cols[of[0]].Field, cols[of[1]].Field = name.FieldFrom, name.FieldTo
	return cols
}

// bare reads rows without headings by their cells alone: a column of cavities, or of ends, and names
// beside it. Values go by what they are.
//
//	1 | FEED          P1:1 | ALT1:B | 8 AWG | red         P1:1 to ALT1:B | 8 AWG | red
//	2 | GROUND        P1:2 | ALT1:L | 20 AWG | white      P1:2 to ALT1:L | 20 AWG | white
func bare(l *look) []shape.Column {
	if len(l.Src.Head) > 0 || l.Src.Listed || l.Src.Runs {
		return nil
	}
	cols := slices.Clone(l.Cols)
	pin, signal := l.Find(cols, name.FieldPin), l.Find(cols, name.FieldSignal)
	var ends []int
	for i, c := range cols {
		if c.Given && (c.Field == name.FieldFrom || c.Field == name.FieldTo) {
			ends = append(ends, i)
		}
	}
	texts := -1
	if !slices.ContainsFunc(cols, func(c shape.Column) bool { return c.Given }) {
		texts = column.EndTexts(l.Src.Rows, len(cols))
	}
	parted := -1 // the second of two columns of ends with another sign than a colon
	if texts < 0 && len(ends) == 0 {
		if of := l.partedEnds(); of != nil {
			ends, parted = of, of[1]
		}
	}
	said := parted < 0 && (pin >= 0 || len(ends) > 0) // by a person: the cells say the rest
	for i := range cols {
		p := &l.Prof[i]
		switch {
		case p.Filled == 0 || cols[i].Field != name.FieldKeep || parted >= 0 && slices.Contains(ends, i):
		case texts >= 0 && (i == texts || i == texts+1):
			ends = append(ends, i)
		case texts >= 0 && i > texts && 2*p.Filled < len(l.Src.Rows):
			cols[i].Field = name.FieldNote
		case (texts >= 0 || (pin >= 0 || len(ends) == 2) && l.Has(cols, name.FieldColour)) && !l.Has(cols, name.FieldGauge) &&
			column.IsSizes(l.Src.Rows, i):
			cols[i].Field = name.FieldGauge
		case texts < 0 && signal < 0 && len(ends) == 0 && pin >= 0 && column.AreNamesAndFar(l.Src.Rows, i):
			signal = i
		case texts < 0 && len(ends) < 2 && (p.All(p.Ends) || l.AllParted(i) ||
			pin >= 0 && l.Titled() != "" && (column.AreFarEnds(l.Src.Rows, i) || column.AreFarEndsAsElsewhere(l.Src.Table.Rows, i))):
			ends = append(ends, i)
		case p.Coloured() && !l.Has(cols, name.FieldColour):
			cols[i].Field = name.FieldColour
		case p.All(p.Units) && !l.Has(cols, name.FieldGauge):
			cols[i].Field = name.FieldGauge
		case pin < 0 && signal < 0 && i+1 < len(cols) && l.namesConnectors(i) && l.Prof[i+1].All(l.Prof[i+1].Cavities):
			cols[i].Field = name.FieldConnector
		case pin < 0 && signal < 0 && i > 0 && cols[i-1].Field == name.FieldConnector:
			pin = i
		case pin < 0 && signal < 0 && p.All(p.Cavities) && p.Unique() && 2*p.Filled > len(l.Src.Rows):
			pin = i
		case signal < 0 && 2*p.Words >= p.Filled && 2*p.States < p.Filled+1:
			signal = i
		}
	}
	if signal < 0 && pin >= 0 && len(ends) == 1 {
		signal = l.soleText(cols, pin, ends[0])
	}
	switch {
	case said && len(ends) < 2:
	case len(ends) == 2:
		for k, f := range []name.Field{name.FieldFrom, name.FieldTo} {
			if !cols[ends[k]].Given {
				cols[ends[k]].Field = f
			}
		}
		if pin >= 0 && pin < ends[0] && !cols[pin].Given {
			cols[pin].Field = name.FieldWire
		} else if q := &l.Prof[0]; ends[0] > 0 && cols[0].Field == name.FieldKeep && !cols[0].Given && q.All(q.Ids) && q.Unique() {
			cols[0].Field = name.FieldWire
		}
	case len(ends) == 0 && pin >= 0 && signal > pin && l.Prof[signal].Distinct > 1:
		cols[pin].Field = name.FieldPin
	case len(ends) == 1 && !said && pin >= 0 && signal > pin && ends[0] > pin && l.Titled() != "": // "1 | INJ1 | red | J4-1" of a plug
		cols[pin].Field, cols[ends[0]].Field = name.FieldPin, name.FieldTo
	case len(ends) == 0 && l.Has(cols, name.FieldRun):
	default:
		return nil
	}
	if signal < 0 && len(ends) == 2 {
		signal = l.soleText(cols)
	}
	if signal >= 0 && !cols[signal].Given {
		cols[signal].Field = name.FieldSignal
	}
	return cols
}

// soleText is the one column that is left of a list of both ends without headings and holds texts, hardly one of them twice: the names of
// the wires; −1 where there is none, or several.
func (l *look) soleText(cols []shape.Column, but ...int) (at int) {
	at = -1
	for i, c := range cols {
		p := &l.Prof[i]
		if c.Field != name.FieldKeep || c.Given || p.Filled == 0 || slices.Contains(but, i) {
			continue
		}
		if at >= 0 || 2*p.Filled < len(l.Src.Rows) || 4*p.Distinct < 3*p.Filled || p.Prose > 0 || 2*p.States > p.Filled ||
			2*(p.Numbers+p.Cavities+p.Sizes+p.Colours+p.Lengths+p.Ends) > p.Filled {
			return -1
		}
		at = i
	}
	return at
}

// points reads the points of a list that package block has parted in a cavity and its name.
//
//   - 1 Rudder motor +
//   - 3 - red - Rudder sense
func points(l *look) []shape.Column {
	if !l.Src.Listed {
		return nil
	}
	if l.Src.Fixed {
		return []shape.Column{{Field: name.FieldPin}, {Field: name.FieldSignal}, {Field: name.FieldColour}, {Field: name.FieldGauge},
			{Field: name.FieldTo}, {Field: name.FieldNote}}
	}
	cols := []shape.Column{{Field: name.FieldPin}}
	for i := 1; i < len(l.Prof); i++ {
		f, p := name.FieldKeep, &l.Prof[i]
		has := func(f name.Field) bool { return l.Has(cols, f) }
		switch {
		case p.Coloured() && !has(name.FieldColour) && (len(l.Prof) > 2 || point.OnlyColours(l.Src.Table.Rows)):
			f = name.FieldColour
		case p.All(p.Sizes) && has(name.FieldSignal) && !has(name.FieldGauge) && len(l.Prof) > 2:
			f = name.FieldGauge
		case !has(name.FieldSignal):
			f = name.FieldSignal
		}
		cols = append(cols, shape.Column{Field: f})
	}
	return cols
}
