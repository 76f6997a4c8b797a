package together

import (
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/thingpins"
	"contralay/model/wirelist/words"
)

// none stands for a column that there is not.
const none = -1

// place is where the wires of a table end.
type place struct {
	device, pins int        // columns; none where it has no such
	of           string     // the device that the heading of the cavities names; "" where it names none
	side         name.Field // FieldFrom or FieldTo where a heading says it
	number       bool       // its cavities stand below "No.", which could be the numbers of the wires as well
}

// isPin tells the words for cavities.
func (t *Table) isPin(w string) bool { return t.Words[w].Field == name.FieldPin }

// pinHead parts the heading of a column of cavities in the device that it names and the word for them; ok is false of any other.
func (t *Table) pinHead(i int) (of string, ok bool) {
	c := &t.Cols[i]
	switch c.Field {
	case name.FieldPin, name.FieldFromPin, name.FieldToPin:
		if c.Of == "" {
			of, _ = thingpins.PinOf(c.Head, t.isPin)
			if w := name.Words(table.Fold(c.Head)); t.Words[strings.Join(w, " ")].Field != "" && !t.isLoneSide(i, of) {
				of = "" // "Pin No", "From pin"
			}
		}
		return of, true
	case name.FieldKeep:
		of, ok = thingpins.PinOf(c.Head, t.isPin)
		return of, ok && of != ""
	}
	return "", false
}

// isLoneSide reports whether a heading like "Pin A" has no other side beside it: A is the name of a plug then.
func (t *Table) isLoneSide(i int, of string) bool {
	if len(of) != 1 || of < "A" || of > "Z" {
		return false
	}
	for k, c := range t.Cols {
		if k != i && (c.Field == name.FieldFromPin || c.Field == name.FieldToPin || c.Field == name.FieldFrom || c.Field == name.FieldTo) {
			return false
		}
	}
	return true
}

// pins is a column of cavities: the device that its heading names, "" where it says only where they are counted, "Physical pin"; ok is
// false of any other column, and of numbers that a program or a chip has for them.
func (t *Table) pins(i int) (of string, ok bool) {
	if t.Cols[i].Alias {
		return "", false
	}
	of, ok = t.pinHead(i)
	if strings.Trim(of, "0123456789. ") == "" && of != "" {
		return "", false // "1 Pin", "2 Pin": counts
	}
	for _, w := range name.Words(table.Fold(of)) {
		switch {
		case pads.IsSoftware(w) && w != "driver" || pads.IsChipWord(w) || w == "offset": // of a motor, too
			return "", false
		case pads.IsPlacing(w):
			of = ""
		}
	}
	return of, ok
}

// headedPads reports whether a column that nobody knows is headed by the name of a part and holds the pads of it, and nothing else: "DHT22"
// over DATA, VCC and GND, beside the pins of a board.
func (t *Table) headedPads(i int) bool {
	c, p := &t.Cols[i], &t.Prof[i]
	w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
	if c.Field != name.FieldKeep && c.Field != name.FieldConnector || c.Alias || len(w) == 0 || len(w) > 4 || name.IsRemark(w) ||
		name.IsMeasure(w) || name.IsOtherHead(c.Head) || p.Prose > 0 || 2*p.Colours > p.Filled || p.Most(p.Currents) ||
		p.Most(p.Lengths) || !p.Unique() {
		return false
	}
	if _, pins := t.pins(i); pins || words.HeadsThings(w) {
		return false
	}
	return t.count(i, isShort) == p.Filled && 2*t.count(i, isPad) > p.Filled && t.count(i, isNet) > 0 // "R1", "R2" are relays
}

// holdsCavities reports whether the cells of a column could be cavities.
func (t *Table) holdsCavities(i int) bool {
	p := &t.Prof[i]
	return p.Most(p.Cavities) || p.Most(column.ShortNames(t.Rows, i)) || p.Most(t.count(i, isPad)) || p.Most(t.count(i, isNumberedPad))
}

// count is how many cells of a column are of a kind.
func (t *Table) count(i int, is func(cell string) bool) (n int) {
	for _, r := range t.Rows[:min(len(t.Rows), column.MostLooked)] {
		if i < len(r.Cells) && r.Cells[i] != "" && is(r.Cells[i]) {
			n++
		}
	}
	return n
}

// isShort reports whether a cell could be the name of a pad: one short word.
func isShort(cell string) bool { return len(cell) < 8 && !strings.Contains(cell, " ") }

// isNet reports whether a cell is a supply, a ground or a line of a bus.
func isNet(cell string) bool { return pads.IsSupply(cell) || pads.IsBus(cell) || words.IsNet(cell) }

// isPad reports whether a cell is what boards call their pads: a cavity, a supply, a line of a bus, or a few capitals and a number.
func isPad(cell string) bool {
	letters := strings.TrimRight(cell, "0123456789")
	numbered := letters != cell && len(letters) < 5 && strings.Trim(letters, "ABCDEFGHIJKLMNOPQRSTUVWXYZ_") == ""
	return isShort(cell) && (numbered || name.IsCavity(cell) || isNet(cell) || cell == "+" || cell == "-")
}

// isNumberedPad reports whether a cell is a word in capitals and a number: "MAIN 1".
func isNumberedPad(cell string) bool {
	word, n, ok := strings.Cut(cell, " ")
	return ok && word == strings.ToUpper(word) && isPad(word+n)
}

// holdsDevices reports whether the cells of a column could be the names of devices or ends.
func (t *Table) holdsDevices(i int) bool {
	p := &t.Prof[i]
	headed := t.Cols[i].Field == name.FieldFrom || t.Cols[i].Field == name.FieldTo // "Oil pressure sensor (1)" is no prose
	return (headed || p.Prose*2 <= p.Filled) && !p.Most(p.Numbers) && !p.Most(p.Colours) && !p.Most(p.Sized) && !p.Most(p.Units) &&
		!p.Most(p.Lengths) && !p.Most(p.Currents)
}

// headsDevice reports whether the heading of a column is a word for devices, whatever stands beside it.
func (t *Table) headsDevice(i int) bool {
	c := &t.Cols[i]
	switch c.Field {
	case name.FieldConnector, name.FieldFrom, name.FieldTo:
		return true
	case name.FieldKeep, name.FieldNumber:
		w := name.Words(name.WithoutBrackets(table.Fold(c.Head)))
		things := words.HeadsThings(w) || len(w) == 1 && name.IsUnit(w[0]) || c.Field == name.FieldKeep && t.numbersHead(i)
		p := &t.Prof[i]
		return things && (c.Field == name.FieldKeep || 2*p.Numbers < p.Filled && !(p.All(p.Ids) && p.Unique())) // "Item" numbers rows, too
	}
	return false
}

// numbersHead reports whether the cells of a column are its own heading and a number, "ESC 1" below "ESC".
func (t *Table) numbersHead(i int) bool {
	w := name.Words(table.Fold(t.Cols[i].Head))
	if len(w) != 1 || name.IsOtherHead(t.Cols[i].Head) || name.IsRemark(w) {
		return false
	}
	return t.Prof[i].All(t.count(i, func(cell string) bool {
		rest, ok := strings.CutPrefix(table.Fold(cell), w[0])
		return ok && rest != "" && strings.Trim(rest, " -_0123456789") == ""
	}))
}

// find looks for the places of a table, from the left to the right; ok is false where a column is of two of them.
func (t *Table) find() (all []place, ok bool) {
	used := map[int]bool{}
	for i := range t.Cols {
		of, is := t.pins(i)
		if !t.filled(i) || !is {
			continue
		}
		if !t.holdsCavities(i) {
			return nil, false
		}
		p := place{device: t.deviceOf(i, of), pins: i, of: of}
		if p.device >= 0 {
			if used[p.device] || t.Prof[p.device].Most(t.Prof[p.device].Ends) {
				return nil, false
			}
			used[p.device], p.of = true, ""
		}
		all = append(all, p)
	}
	if len(all) == 0 {
		if k := t.counted(); k >= 0 {
			all, used[k], used[k+1] = append(all, place{device: k, pins: k + 1}), true, true
		}
	}
	if len(all) == 1 && all[0].device == none && all[0].of != "" { // the pins of a board: the other column is headed by its part
		for i := range t.Cols {
			if t.filled(i) && i != all[0].pins && t.headedPads(i) {
				all = append(all, place{device: none, pins: i, of: t.Cols[i].Head})
				used[i] = true
			}
		}
	}
	for i := range t.Cols {
		if !t.filled(i) || used[i] || !t.headsDevice(i) {
			continue
		}
		if !t.holdsDevices(i) {
			return nil, false
		}
		p := place{device: i, pins: none}
		if n := i + 1; t.isNumberOf(n) {
			p.pins, p.number = n, true
		}
		all = append(all, p)
	}
	for k := range all {
		all[k].side = t.side(all[k])
	}
	return all, true
}

// isNumberOf reports whether a column below "No." or the like is of the cavities of the devices right before it.
//
//	Plug | No. | Function
//	WCU  | 04  | ramp feed
func (t *Table) isNumberOf(i int) bool {
	return i > 0 && i < len(t.Cols) && t.Cols[i].Field == name.FieldNumber && t.filled(i) && t.holdsCavities(i) && !t.headsDevice(i) &&
		t.filled(i-1) && t.headsDevice(i-1) && t.holdsDevices(i-1) && t.Cols[i-1].Field != name.FieldTo
}

// counted is the first of two columns, whatever their headings, of which the second counts anew with each name of the first; none where
// none are.
//
//	Strip | Tag | Purpose
//	T1    | 1   | bus +
//	T1    | 2   | bus -
//	T2    | 1   | point 1
func (t *Table) counted() int {
	for k := 0; k+1 < len(t.Cols) && k < 2; k++ {
		p, q := &t.Prof[k], &t.Prof[k+1]
		if !t.filled(k) || !t.filled(k+1) || t.isNumberOf(k+1) || t.Cols[k+1].Field == name.FieldGauge {
			continue
		}
		names := !p.Most(p.Numbers) && !p.Most(p.Colours) && p.Prose == 0
		if names && q.All(q.Cavities) && !q.Most(q.Units) && column.PlacesBeginAgain(t.Rows, k, k+1) {
			return k
		}
	}
	return none
}

// deviceOf is the column of the device that cavities are of: the one that their heading names, else the one right before them.
func (t *Table) deviceOf(i int, of string) int {
	if of != "" {
		for k := range t.Cols {
			if k != i && t.filled(k) && t.headsDevice(k) && words.SameNoun(of, name.Words(table.Fold(t.Cols[k].Head))) {
				return k
			}
		}
		return none
	}
	if k := i - 1; k >= 0 && t.filled(k) && t.headsDevice(k) && t.holdsDevices(k) {
		return k
	}
	return none
}

// side is what the headings of a place say of its side.
func (t *Table) side(p place) name.Field {
	for _, i := range []int{p.device, p.pins} {
		if i == none {
			continue
		}
		switch f := t.Cols[i].Field; {
		case i == p.pins && p.of != "": // "Pin A", where A is a plug
		case f == name.FieldFrom || f == name.FieldFromPin:
			return name.FieldFrom
		case f == name.FieldTo || f == name.FieldToPin:
			return name.FieldTo
		}
	}
	return ""
}

// filled reports whether a column has something in it.
func (t *Table) filled(i int) bool { return i < len(t.Prof) && t.Prof[i].Filled > 0 }

// once reports whether hardly two rows are of one cavity of a place, a device that is written once being that of the rows below it.
func (t *Table) once(p place) bool {
	if p.pins == none {
		return false
	}
	seen, rows, device := map[string]bool{}, 0, ""
	for _, r := range t.Rows[:min(len(t.Rows), column.MostLooked)] {
		if n, text := r.Filled(); n == 1 {
			device = text // a title between the rows
			continue
		}
		if p.device >= 0 && p.device < len(r.Cells) && r.Cells[p.device] != "" {
			device = table.Fold(r.Cells[p.device])
		}
		if p.pins >= len(r.Cells) || r.Cells[p.pins] == "" {
			continue
		}
		rows++
		seen[device+"\x00"+table.Fold(r.Cells[p.pins])] = true
	}
	return rows > 1 && 20*len(seen) >= 19*rows
}

// StartsTitled reports whether the first row below the headings is a title: what the cavities below it are of.
//
//	No. | Function | Goes to
//	X1
//	1   | feed     | Horn
func StartsTitled(rows []table.Row) bool {
	if len(rows) < 2 {
		return false
	}
	first, _ := rows[0].Filled()
	next, _ := rows[1].Filled()
	return first == 1 && rows[0].Cells[0] != "" && next > 1
}
