package settle

import (
	"contralay/model/wirelist/bothends"
	"slices"
	"strings"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/column"
	"contralay/model/wirelist/described"
	"contralay/model/wirelist/farcolumn"
	"contralay/model/wirelist/fuseways"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/outputs"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/splicecells"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/thingpins"
)

// settle changes what a heading alone says to what the cells below it are. What a person said holds.
func (l *Look) settle() {
	ends := endColumns{l}
	l.channelsWithGaps()
	ends.asksWhere()
	ends.slips()
	l.toldEnds()
	l.cablesNamedOnce()
	l.swapped()
	l.sidesAB()
	bothends.TwinEnds(l.Cols, l.Prof, l.Src.Rows)
	ends.sidePins()
	bothends.SidePlaces(l.Cols, l.Prof, l.Src.Rows)
	bothends.PinsOfHeading(l.Cols, l.rightAbove())
	bothends.EndsUnderPlugs(l.Cols, l.Src.Rows)
	bothends.LetteredPins(l.Cols, l.Prof, len(l.Src.Titles) > 0)
	bothends.EndLabels(l.Cols, l.Prof)
	bothends.FarPins(l.Cols, l.Prof)
	column.Misheaded(l.Cols, l.Prof, l.Src.Rows)
	column.TellNoWire(l.Cols, l.Prof)
	ends.joinedHeads()
	ends.pinBehindTo()
	bothends.TerminalsBesidePins(l.Cols)
	bothends.FourColumns(l.Cols, l.Prof, l.Src.Rows, func(w string) bool { return l.Heads.Words[w].Field == name.FieldPin })
	bothends.Crimped(l.Cols, l.Prof, l.Src.Rows)
	bothends.MarkedNames(l.Cols, l.Prof)
	bothends.NearDevice(l.Cols, l.Prof, l.Src.Rows)
	bothends.SidesOfWall(l.Cols, l.Prof, l.Src.Rows, l.Titled())
	ends.stripNumbers()
	l.idsByCells()
	ends.numbersOfPlugs()
	l.padColumns()
	l.placedPins()
	l.countedPins()
	l.pinNames()
	ends.groupPairs()
	fuseways.Settle(l.Cols, l.Prof)
	for range 2 { // what one column turns out to be may say what another is
		for i := range l.Cols {
			if c := &l.Cols[i]; !c.Given && c.OfEnd == "" && l.Prof[i].Filled > 0 {
				l.settleOne(i, c)
			}
		}
	}
	column.IdsBesideNames(l.Cols, l.Prof)
	isPin := func(w string) bool { return l.Heads.Words[w].Field == name.FieldPin }
	outputs.OfUnit(l.Cols, l.Prof, l.Src.Rows, isPin)
	thingpins.Settle(l.Cols, l.Prof, isPin)
	thingpins.OwnPins(l.Cols, l.Prof, isPin)
	thingpins.Plugs(l.Cols, l.Prof, l.Src.Rows)
	thingpins.Unit(l.Cols, l.Prof, isPin)
	thingpins.Taps(l.Cols, l.Prof, isPin)
	ends.loadDevices()
	ends.deviceBeforePin()
	ends.farBoard()
	ends.pairs()
	ends.devicePairs()
	ends.besidePin()
	ends.plugColumn()
	ends.thingsOfPins()
	ends.repeatedDevices()
	bothends.NamedPins(l.Cols, l.Prof, l.Src.Rows, l.EndsInPin)
	ends.farPins()
	column.UnheadedPins(l.Cols, l.Prof, l.Src.Rows)
	l.pinCells()
	l.slashed()
	if !l.AnotherPin(-1) {
		bothends.Settle(l.Cols, l.Prof, l.Src.Rows)
	}
	ends.endsInPlaceOfNumbers()
	ends.plugNumbers()
	l.plugs()
	bothends.Termination(l.Cols, l.Prof)
	bothends.CommaEnds(l.Cols, l.Prof, l.Src.Rows)
	l.farDevice()
	l.deviceOfPins()
	ends.deviceOfStrips()
	if !l.Has(l.Cols, name.FieldWire) {
		l.idsByCells() // what the strips are is known by now
	}
	l.Src.Rows = bothends.PlugsOfUnits(l.Cols, l.Src.Rows, func(w string) bool { return l.Heads.Words[w].Field == name.FieldConnector })
	l.connectionNames()
	farcolumn.Settle(l.Cols, l.Prof, l.Src.Rows, l.Titled(), l.AnotherPin)
	farcolumn.SameHead(l.Cols, l.Prof, l.Src, l.Heads)
	l.numbered()
	bothends.NumbersOfEnd(l.Cols, l.Prof, l.Src.Rows)
	for i := range l.Cols {
		if c := &l.Cols[i]; !c.Given && c.OfEnd == "" && l.Prof[i].Filled > 0 && c.Field == name.FieldKeep {
			l.settleUnknown(i, c)
		}
	}
	if len(l.Src.Head) > 0 && !l.Has(l.Cols, name.FieldSignal, name.FieldFrom, name.FieldFromPin, name.FieldRun) &&
		(l.AnotherPin(-1) || l.Has(l.Cols, name.FieldNumber)) {
		l.settleNames()
	}
	bothends.UnitNames(l.Cols, l.Prof, func(w string) bool { return l.Heads.Words[w].Field == name.FieldSignal })
	soleName(l)
	thingpins.Names(l.Cols, l.Prof, l.Src.Rows)
	described.Settle(l.Cols, l.Prof, l.Src.Rows)
	remarkNames(l)
	splicecells.Settle(l.Cols, l.Src.Rows)
}

// plugs reads two headings that name a connector each, over nothing but cavities.
//
//	Signal | Plug A | Plug B
//	TX+    | 1      | 3
func (l *Look) plugs() {
	for i := range l.Cols {
		c, p := &l.Cols[i], &l.Prof[i]
		w := name.Words(table.Fold(c.Head))
		if (c.Field == name.FieldConnector || c.Field == name.FieldFrom) && !c.Given && len(w) == 2 &&
			l.Heads.Words[w[0]].Field == name.FieldConnector &&
			strings.Trim(w[1], "0123456789") == "" && p.All(p.Cavities) && p.Unique() && p.Filled > 2 && !l.AnotherPin(-1) {
			c.Field, c.Of = name.FieldPin, c.Head // "Connector 1" over 1, 2, 3
		}
	}
	from, to := l.Holds(l.Cols, name.FieldFrom), l.Holds(l.Cols, name.FieldTo)
	if from < 0 || to < 0 || l.Has(l.Cols, name.FieldFromPin, name.FieldToPin) {
		return
	}
	for _, i := range []int{from, to} {
		w := name.Words(table.Fold(l.Cols[i].Head))
		if p := &l.Prof[i]; len(w) != 2 || l.Heads.Words[w[0]].Field != name.FieldConnector || !p.All(p.Cavities) || !p.Unique() ||
			l.Cols[i].Given {
			return
		}
	}
	for k, i := range []int{from, to} {
		l.Cols[i].Field, l.Cols[i].Of = []name.Field{name.FieldFromPin, name.FieldToPin}[k], l.Cols[i].Head
	}
}

// farDevice reads the device that a row begins with, beside the cavities of another and a name, as the other end.
//
//	Sensor | Wire color | Function | ECU pin
//	MAP    | Red        | 5 V      | B2
func (l *Look) farDevice() {
	pins, signal := 0, l.Holds(l.Cols, name.FieldSignal)
	for i, c := range l.Cols {
		if c.Field == name.FieldPin || c.Field == name.FieldFrom || c.Field == name.FieldTo || c.Field == name.FieldRun {
			return
		}
		if l.EndsInPin(c.Head) && l.Prof[i].Filled > 0 {
			pins++
		}
	}
	if pins != 1 || signal < 0 || !l.Cols[signal].Known() {
		return
	}
	for i := range l.Cols {
		c := &l.Cols[i]
		if w := name.Words(table.Fold(c.Head)); c.Given || c.Field != name.FieldKeep && c.Field != name.FieldConnector || len(w) != 1 ||
			l.Prof[i].Filled == 0 {
			continue
		} else if name.IsDeviceWord(w[0]) {
			c.Field = name.FieldTo
			return
		}
	}
}

// swapped finds the headings of colours and of names that stand over each other's cells.
//
//	Pin | Color    | Signal
//	1   | Signal + | Red
func (l *Look) swapped() {
	colour, signal := l.Holds(l.Cols, name.FieldColour), l.Holds(l.Cols, name.FieldSignal)
	if colour < 0 || signal < 0 || l.Cols[colour].Given || l.Cols[signal].Given {
		return
	}
	c, s := &l.Prof[colour], &l.Prof[signal]
	if c.Filled > 1 && c.Colours == 0 && c.Numbers == 0 && 2*s.Colours > s.Filled && s.Colours > 1 {
		l.Cols[colour].Field, l.Cols[signal].Field = name.FieldSignal, name.FieldColour
		l.Cols[colour].Against, l.Cols[signal].Against = true, true
	}
}

// settleNames takes the one column of words that nobody knows, beside cavities, for the names of the nets. Of
// several the first holds them.
//
//	Pin | Depth string        No | Pair | Colour     | Stop
//	1   | IN+                 1  | 1    | white/blue | Flute 8
func (l *Look) settleNames() {
	for i := range l.Cols {
		c, p := &l.Cols[i], &l.Prof[i]
		w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
		device := c.Field == name.FieldConnector && p.Unique() && p.Filled > 1 && !l.Has(l.Cols,
			name.FieldTo, name.FieldToPin) // each one once: what hangs on the cavity
		if c.Given || c.Alias || c.Field != name.FieldKeep && !device || len(w) > 1 && l.Heads.Words[w[len(w)-1]].Field == name.FieldPin ||
			c.Field == name.FieldKeep && name.IsRemark(w) {
			continue
		}
		if p.Filled > 0 && 2*(p.Filled-p.Numbers-p.Cavities) >= p.Filled && 5*p.Distinct >= 3*p.Filled && p.Prose*2 <= p.Filled &&
			!p.Most(p.Colours) && !p.Most(p.Sized) && !p.Most(p.Currents) {
			c.Field = name.FieldSignal
			return
		}
	}
}

// settleOne looks at a column whose heading is known.
func (l *Look) settleOne(i int, c *shape.Column) {
	p := &l.Prof[i]
	switch c.Field {
	case name.FieldPin:
		if l.isCount(i, c) {
			c.Field = name.FieldKeep
			break
		}
		if outputs.Numbers(l.Cols, l.Prof, l.Src.Rows, i) {
			c.Field, c.Alias = name.FieldKeep, true
			break
		}
		if w := name.Words(table.Fold(c.Head)); len(w) == 1 && l.Titled() == "" || len(w) == 1 && len(l.Src.Titles) == 0 {
			if w[0] == "gpio" || w[0] == "channel" || w[0] == "port" || w[0] == "output" {
				c.Of = c.Head
			}
		}
		if w := strings.Join(name.Words(table.Fold(c.Head)), " "); l.another(i, name.FieldPin) && !p.Most(p.Cavities) &&
			(w == "channel" || w == "port" || w == "gpio" || w == "output") {
			c.Field, c.Alias = name.FieldKeep, column.TellFunctions(l.Cols)
			if !l.another(i, name.FieldSignal) {
				c.Field = name.FieldSignal // "AN1 ride height": what the maker calls the cavity
			}
			break
		}
		if l.ofContacts(c) && (p.All(p.Contacts) && !p.Unique() || l.another(i, name.FieldPin) && !p.Most(p.Cavities)) {
			c.Field = name.FieldKeep
			if p.All(p.Contacts) {
				c.Field = name.FieldContact
			}
		}
	case name.FieldFromPin, name.FieldToPin:
		// "Terminal A: fork" is what is crimped on, where the ends have their cavities.
		if !p.Most(p.Cavities) && !p.Unique() && !p.Most(l.pads(i)) && (l.another(i, name.FieldFrom) || l.another(i, name.FieldTo)) &&
			!l.placesWithin(i) && !p.Most(column.ShortMarks(l.Src.Rows, i)) &&
			!column.ArePlainPins(l.Src.Rows, l.Cols[max(i-1, 0)].Head, c.Head, i) {
			c.Field = name.FieldKeep
		}
	case name.FieldGauge:
		if !c.Said && !c.Section && p.All(p.Contacts) && column.CountsContacts(l.Src.Titles, l.Src.Rows, i) {
			c.Field = name.FieldContact
		}
	case name.FieldWire:
		switch {
		case l.countsCores(i):
			c.Field, c.Spared = name.FieldKeep, true
		case !l.another(i, name.FieldGauge) && (p.Most(p.Sized) || p.Sized > 1 && p.All(p.Sized+p.States+column.Drains(l.Src.Rows, i))) &&
			!column.AreSeries(l.Src.Rows, i):
			c.Field = name.FieldGauge // "1.5 mm² brown"
		case (p.Coloured() || column.AreCoreColours(l.Src.Rows, i, p, l.Lang)) && !l.another(i, name.FieldColour):
			c.Field = name.FieldColour
		case l.another(i, name.FieldWire) && !l.another(i, name.FieldSignal) && !c.Given && 2*max(p.Numbers, p.Cavities) < p.Filled &&
			shape.IsCircuit(c.Head):
			c.Field = name.FieldSignal // what they do; another column numbers them
		case (p.Most(p.Words) || shape.IsCircuit(c.Head) && p.Ids+p.Numbers+p.Currents == 0) && p.Most(p.Long) &&
			2*p.States < p.Filled && !l.another(i, name.FieldSignal):
			c.Field = name.FieldSignal // names of circuits
		}
	case name.FieldNote:
		if p.Filled > 1 && p.All(p.Sized) && p.Colours == 0 && !l.Has(l.Cols, name.FieldGauge, name.FieldColour) {
			c.Field, c.Against = name.FieldGauge, true // "red 22 AWG" below "Note"
		}
	case name.FieldSpec, name.FieldStripe:
		if column.AloneInColours(l.Prof, i) && !l.another(i, name.FieldColour) {
			c.Field = name.FieldColour // "Insulation: red", "Base/stripe: red/white"
			break
		}
		if p.Most(p.Sized) && !l.another(i, name.FieldGauge) {
			c.Field = name.FieldGauge // "Wire type: 20 AWG red"
			break
		}
		if p.Specs == 0 && i > 0 && l.Prof[i-1].Filled > 0 && sidehead.NumbersPart(c.Head, l.Cols[i-1].Head, l.Cols[i-1].Field) {
			c.Field = name.FieldKeep
			break
		}
		if w := name.Words(table.Fold(c.Head)); (len(w) == 1 && (w[0] == "type" || w[0] == "typ" || w[0] == "tipo")) && !p.Most(p.Specs) {
			c.Field = name.FieldKeep
			if p.Most(p.Sized) && !l.another(i, name.FieldGauge) {
				c.Field = name.FieldGauge
			}
		}
	case name.FieldCable:
		if w := name.Words(table.Fold(c.Head)); w[0] == "group" && len(w) == 1 && !column.Marks(l.Src.Rows, i) {
			c.Field = name.FieldKeep // a heading of order
		} else if !cable.Words(c.Head).IsCable() && p.Coloured() && 2*p.Distinct > p.Filled && !l.another(i, name.FieldColour) {
			c.Field = name.FieldColour // "Cable: red", of single wires
		} else if !cable.Words(c.Head).IsCable() && !l.another(i, name.FieldGauge) && column.AreSizes(l.Src.Rows, i, l.Mark) {
			c.Field, c.Sizes = name.FieldGauge, true
		} else if p.Most(p.Sized) && p.Specs < p.Filled && !l.another(i, name.FieldGauge) && !l.another(i, name.FieldColour) {
			c.Field = name.FieldGauge // "FLRY-B 2.5 RD"
		}
	case name.FieldCurrent:
		if l.namesLoads(i) {
			c.Field = name.FieldSignal
			break
		}
		if p.Most(p.Filled-p.Numbers-p.Currents) && p.Currents == 0 && p.Long > 0 && l.another(i, name.FieldSignal) && l.AnotherPin(i) &&
			!l.Has(l.Cols, name.FieldTo, name.FieldFrom, name.FieldToPin, name.FieldRun) {
			c.Field = name.FieldTo // "Load: Pump 1" beside a name of the net
			break
		}
		// "Load: Pump 1" is what the wire feeds.
		if p.Most(p.Filled-p.Numbers-p.Currents) && p.Currents == 0 && !l.another(i, name.FieldSignal) && p.Long > 0 {
			c.Field = name.FieldSignal
		}
	case name.FieldFuse:
		// "Breaker 1, Nav lights, white, 16 AWG": the wire starts at the breaker.
		if p.All(p.Cavities) && p.Unique() && p.Filled > 1 && !l.AnotherPin(i) && !l.another(i, name.FieldFrom) && !l.another(i,
			name.FieldFromPin) &&
			!l.another(i, name.FieldWire) && (l.another(i, name.FieldColour) || l.another(i, name.FieldGauge)) && !p.Most(p.Currents) {
			c.Field, c.Of = name.FieldPin, c.Head
		}
	case name.FieldSignal:
		if w := name.Words(table.Fold(c.Head)); len(w) == 1 && (w[0] == "line" || w[0] == "linie") && 2*p.Numbers > p.Filled {
			c.Field = name.FieldKeep // the number of a line
		} else if len(w) == 1 && (w[0] == "label" || w[0] == "tag") && p.All(p.Ids) && p.Distinct == p.Filled &&
			!l.another(i, name.FieldWire) && l.another(i, name.FieldFrom) && l.another(i, name.FieldTo) {
			c.Field = name.FieldWire // what its label says
		}
	case name.FieldFrom, name.FieldTo:
		if p.All(p.Studs) {
			c.Field = name.FieldKeep // what its lug fits, no place
		}
	case name.FieldNumber:
		if l.AnotherPin(i) && !column.CountsUp(l.Src.Rows, i) && p.Unique() && !l.another(i, name.FieldWire) {
			c.Field = name.FieldWire
		}
	case name.FieldConnector:
		if p.Most(p.Cavities) && p.Unique() && p.Filled > 1 && !l.AnotherPin(i) && !l.another(i, name.FieldFrom) && !l.another(i,
			name.FieldTo) {
			c.Field, c.Of = name.FieldPin, c.Head
		}
	}
}

// settleUnknown looks at a column whose heading nobody knows.
func (l *Look) settleUnknown(i int, c *shape.Column) {
	if c.Head != "" && l.Holds(l.Cols, name.FieldPin) >= 0 &&
		!l.Has(l.Cols, name.FieldFrom, name.FieldFromPin, name.FieldTo, name.FieldToPin, name.FieldRun) {
		if of := pads.TitledAs(l.Src.Table.Rows, l.Src.Titles, l.Src.Rows, i, c.Head); of != "" {
			c.Field, c.Of = name.FieldToPin, of
			return
		}
	}
	switch p := &l.Prof[i]; {
	case column.MarksCable(c.Head, l.Src.Rows, i):
		c.Field = name.FieldCable // "x" below "TP1"
		c.Know()
	case column.TellPartners(l.Src.Rows, i) && !l.another(i, name.FieldCable):
		c.Field = name.FieldCable // "TP with 2", below any heading
		c.Know()
	case p.Coloured() && p.Filled > 1 && !l.another(i, name.FieldColour):
		c.Field, c.Spared = name.FieldColour, false
	case p.Sized > 1 && p.Colours > 1 && p.Sized+p.Colours >= p.Filled && !l.another(i, name.FieldColour) && !l.another(i, name.FieldGauge):
		c.Field = name.FieldGauge // "red", "14 AWG red", "18 AWG": what is not as in the other rows
	case p.Filled > 1 && column.Marks(l.Src.Rows, i) && !l.another(i, name.FieldCable) && l.cableWords(i):
		c.Field = name.FieldCable // "TWP", below a heading of the shop
	case (p.Most(p.Ends) || l.AllParted(i) && !l.EndsInPin(c.Head) && !column.Addresses(l.Src.Rows, i) ||
		column.ArePlugEnds(c.Head, l.Src.Rows, i) || name.SaysDevicePin(c.Head) && column.CavitiesIn(l.Src.Rows, i) == p.Filled) &&
		l.AnotherPin(i) && !l.another(i, name.FieldTo) && !l.another(i, name.FieldFrom):
		c.Field = name.FieldTo
	case l.farPlaces(i):
		c.Field, c.Guessed = name.FieldTo, true
	case p.All(max(p.Units, p.Sized)) && p.Filled > 1 && !l.another(i, name.FieldGauge) && !name.IsSpent(c.Head) && !c.Spared:
		c.Field = name.FieldGauge
	}
}

// another reports whether a column other than one is of a field and holds something.
func (l *Look) another(i int, f name.Field) bool {
	for k, c := range l.Cols {
		if k != i && c.Field == f && l.Prof[k].Filled > 0 {
			return true
		}
	}
	return false
}

// AnotherPin reports whether a column other than one holds cavities by its heading, "Pin" or "ECU pin".
func (l *Look) AnotherPin(i int) bool {
	for k, c := range l.Cols {
		w := name.Words(table.Fold(c.Head))
		if k != i && (c.Field == name.FieldPin || c.Field == name.FieldKeep && len(w) > 1 &&
			l.Heads.Words[w[len(w)-1]].Field == name.FieldPin) {
			return true
		}
	}
	return false
}

// isCount reports whether a column headed "Pins" is how many there are: whole numbers that do not rise, or beside quantities of parts.
//
//	Name | Type         | Pins
//	C1   | square, 4 way | 4
//	C2   | square, 2 way | 2
func (l *Look) isCount(i int, c *shape.Column) bool {
	w := name.Words(table.Fold(c.Head))
	if len(w) != 1 || !slices.Contains([]string{"pins", "ways", "cavities", "pines", "kontakte"}, w[0]) {
		return false
	}
	return column.Falls(l.Src.Rows, i) || w[0] != "pins" && !l.Has(l.Cols, name.FieldSignal, name.FieldColour, name.FieldGauge,
		name.FieldFrom, name.FieldTo) &&
		slices.ContainsFunc(l.Cols, func(o shape.Column) bool { return name.OtherKind(table.Fold(o.Head)) == "parts" })
}

// ofContacts reports whether a heading is of contacts, which have sizes and part numbers.
func (l *Look) ofContacts(c *shape.Column) bool {
	for _, w := range name.Words(table.Fold(c.Head)) {
		switch w {
		case "contact", "contacts", "kontakt", "contacto", "contatto", "terminal":
			return true
		}
	}
	return false
}
