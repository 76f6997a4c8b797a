// Package titleplugs calls the plugs of one board by the titles of the tables that count its pins from 1 again.
//
//	### TELEM1 to radio        ### GPS1 to compass
//	FC pin | Radio pin         FC pin | Compass pin
//	1      | 1                 1      | 1              FC TELEM1:1, FC GPS1:1
//
// It reads the numbers of the cavities, and no other cell: a board whose pins have names has each of them once.
package titleplugs

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// plug is one end of all wires of a table: the column of the cavities, that of the board where each row says it again, the board, and what
// the title calls the plug there.
type plug struct {
	b          *shape.Block
	pin, named int
	board      string
	called     string
	line       int // of the title
}

// Settle takes one side of the titles for the plugs of a board that two tables or more head their cavities with, where the titles name
// several of them and a number comes in more than one. The other side is the device of the other column.
func Settle(blocks []*shape.Block) {
	if len(blocks) < 2 {
		return
	}
	of := map[string][]plug{}
	for _, b := range blocks {
		for _, p := range plugsOf(b) {
			board := table.Fold(p.board)
			of[board] = append(of[board], p)
		}
	}
	for _, all := range of {
		called := map[string]bool{}
		for _, p := range all {
			called[table.Fold(p.called)] = true
		}
		if len(called) < 2 || called[""] || !countsAgain(all) {
			continue
		}
		for _, p := range all {
			p.call()
			isTold := func(r table.Row) bool { return r.Line == p.line } // both of its sides are names now
			p.b.Titles = slices.DeleteFunc(slices.Clone(p.b.Titles), isTold)
		}
	}
}

// call gives the end the name of the board and its plug.
func (p plug) call() {
	if p.named < 0 {
		p.b.Cols[p.pin].Of = p.board + " " + p.called
		return
	}
	p.b.Rows = slices.Clone(p.b.Rows)
	for i := range p.b.Rows {
		if r := &p.b.Rows[i]; p.named < len(r.Cells) && r.Cells[p.named] == p.board {
			r.Cells = slices.Clone(r.Cells)
			r.Cells[p.named] += " " + p.called
		}
	}
}

// plugsOf are both ends of the wires of a table, each with what the title calls its plug; none where the rows have several devices at one
// end, or say more of where a wire goes. The text of a plug is "" where the title names none.
func plugsOf(b *shape.Block) []plug {
	from, to := plug{b: b, pin: -1, named: -1}, plug{b: b, pin: -1, named: -1}
	for i, c := range b.Cols {
		switch c.Field {
		case name.FieldFromPin:
			from.pin = i
		case name.FieldToPin:
			to.pin = i
		case name.FieldFrom:
			from.named = i
		case name.FieldTo:
			to.named = i
		case name.FieldRun, name.FieldVia, name.FieldConnector, name.FieldPin, name.FieldDevicePin:
			return nil
		}
	}
	near, far := sidesOf(b)
	if b.Said != "" || near == "" || !from.ofOne() || !to.ofOne() {
		return nil
	}
	switch {
	case says(near, to.board) && !says(far, to.board):
		from.called = plugIn(far, from.board)
	case says(far, to.board) && !says(near, to.board):
		from.called = plugIn(near, from.board)
	}
	switch {
	case says(near, from.board) && !says(far, from.board):
		to.called = plugIn(far, to.board)
	case says(far, from.board) && !says(near, from.board):
		to.called = plugIn(near, to.board)
	}
	from.line = b.Titles[len(b.Titles)-1].Line
	to.line = from.line
	return []plug{from, to}
}

// ofOne finds the board that all cavities of an end are of, and reports whether they are all of one.
func (p *plug) ofOne() bool {
	if p.pin < 0 || p.b.Cols[p.pin].Given {
		return false
	}
	if p.named < 0 {
		p.board = p.b.Cols[p.pin].Of
		return p.board != ""
	}
	for _, r := range p.b.Rows {
		if p.named >= len(r.Cells) || r.Cells[p.named] == "" {
			continue
		}
		if p.board != "" && p.board != r.Cells[p.named] {
			return false
		}
		p.board = r.Cells[p.named]
	}
	return p.board != "" && !p.b.Cols[p.named].Given
}

// sidesOf are the two devices that the title right above a table names; "" where it names none.
func sidesOf(b *shape.Block) (near, far string) {
	if len(b.Titles) == 0 {
		return "", ""
	}
	_, text := b.Titles[len(b.Titles)-1].Filled()
	if all := arrow.DevicesOfTitle(text); len(all) == 2 {
		return all[0], all[1]
	}
	return "", ""
}

// says reports whether a side of a title has the words of a device: "power module" of "Module", "GPS mast" of "GPS".
func says(side, device string) bool {
	all, of := name.Words(table.Fold(side)), name.Words(table.Fold(device))
	for at := 0; len(of) > 0 && at+len(of) <= len(all); at++ {
		if slices.Equal(all[at:at+len(of)], of) {
			return true
		}
	}
	return false
}

// plugIn is the plug of a board that a side of a title names, behind the board or alone; "" where it is written as none: the name of a
// plug is printed on the board in capitals or has a number behind it.
func plugIn(side, board string) string {
	const most = 3 // words (no source)
	all, of := strings.Fields(side), strings.Fields(board)
	if len(all) > len(of) && strings.EqualFold(strings.Join(all[:len(of)], " "), board) {
		all = all[len(of):]
	}
	side = strings.Join(all, " ")
	last := side[max(len(side)-1, 0):]
	printed := strings.ToUpper(side) == side || len(all) == 1 && strings.Trim(last, "0123456789") == ""
	if side == "" || len(all) > most || !printed || strings.Trim(side, "0123456789. ") == "" || strings.EqualFold(side, board) {
		return ""
	}
	return side
}

// countsAgain reports whether a number of a cavity stands in several of the tables.
func countsAgain(all []plug) bool {
	seen := map[string]*shape.Block{}
	for _, p := range all {
		for _, r := range p.b.Rows {
			if p.pin >= len(r.Cells) {
				continue
			}
			pin, _, _ := strings.Cut(strings.TrimSpace(r.Cells[p.pin]), " ")
			if pin == "" || strings.Trim(pin, "0123456789") != "" {
				continue
			}
			if first := seen[pin]; first != nil && first != p.b {
				return true
			}
			seen[pin] = p.b
		}
	}
	return false
}
