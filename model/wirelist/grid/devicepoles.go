package grid

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// side is a column of devices with those of their poles behind it.
type side struct {
	device int
	poles  []int
}

// devicePoles takes apart a table that has a row for each channel, and for either end a column of its plugs and behind it one for each
// wire of the channel: the headings of those are the same on both sides.
//
//	Channel    | Recorder | HI | LO | Probe | HI | LO | Colours HI/LO
//	Bed temp 1 | R1       | 1  | 2  | Q1    | A  | B  | red/blk
//	Bed temp 2 | R1       | 3  | 4  | Q1    | C  | D  | red/blk
func devicePoles(h shape.Headings, rows []table.Row) (made []table.Row, n int) {
	head := rows[0]
	near, far, ok := sidesOf(head)
	if !ok {
		return nil, 0 // nearly all rows
	}
	for _, r := range rows[1:] {
		if r.First || shape.IsText(r) || len(r.Cells) <= far.device || h.IsHead(r) {
			break
		}
		n++
	}
	if n < 2 || !near.fits(rows[1:n+1]) || !far.fits(rows[1:n+1]) {
		return nil, 0
	}
	cols, _ := h.Columns([]table.Row{head}, 0)
	var taken []poleColumn
	for _, i := range slices.Concat([]int{near.device, far.device}, near.poles, far.poles) {
		taken = append(taken, poleColumn{at: i})
	}
	k := circuit{name: -1, device: -1, colours: -1}
	k.find(cols, rows[1:n+1], taken, len(near.poles))
	if k.name < 0 {
		return nil, 0
	}
	if k.device != k.name {
		k.other = append(k.other, k.device)
	}
	at := head
	at.Cells = []string{"From", "Pin", "To", "Pin", "Signal"}
	if k.colours >= 0 {
		at.Cells = append(at.Cells, "Colour")
	}
	for _, i := range k.other {
		at.Cells = append(at.Cells, head.Cells[i])
	}
	made = append(made, at)
	for _, r := range rows[1 : n+1] {
		for p, i := range near.poles {
			row := r
			row.Cells = []string{cellOf(r, near.device), cellOf(r, i), cellOf(r, far.device), cellOf(r, far.poles[p])}
			if value.IsNothing(row.Cells[1]) && value.IsNothing(row.Cells[3]) {
				continue
			}
			called := cellOf(r, k.name)
			if name.StateOf(called) == name.Used {
				called += " " + head.Cells[i]
			}
			if row.Cells = append(row.Cells, called); k.colours >= 0 {
				row.Cells = append(row.Cells, pieceOf(cellOf(r, k.colours), p, len(near.poles)))
			}
			for _, o := range k.other {
				row.Cells = append(row.Cells, cellOf(r, o))
			}
			made = append(made, row)
		}
	}
	return made, n + 1
}

// sidesOf finds the two sides in a row of headings: a heading with two to four poles behind it, and again with the same.
func sidesOf(head table.Row) (near, far side, ok bool) {
	const most = 4 // wires of a channel (no source)
	var all []side
	for i := 0; i < len(head.Cells); i++ {
		if len(head.Cells[i]) > longestPole || !isPole(head.Cells[i]) && !isSide(head.Cells[i]) {
			continue
		}
		s := side{device: i - 1}
		for ; i < len(head.Cells) && (isPole(head.Cells[i]) || isSide(head.Cells[i])); i++ {
			s.poles = append(s.poles, i)
		}
		if len(s.poles) == 1 {
			continue // "Signal" is a heading of names as well
		}
		if s.device < 0 || head.Cells[s.device] == "" || len(s.poles) > most {
			return near, far, false
		}
		all = append(all, s)
	}
	if len(all) != 2 || len(all[0].poles) != len(all[1].poles) {
		return near, far, false
	}
	for p, i := range all[0].poles {
		if !strings.EqualFold(head.Cells[i], head.Cells[all[1].poles[p]]) {
			return near, far, false
		}
	}
	return all[0], all[1], true
}

// fits reports whether every row names a device and the cells of the poles are cavities, none of them twice in one device.
func (s side) fits(rows []table.Row) bool {
	seen := map[[2]string]bool{}
	for _, r := range rows {
		device := cellOf(r, s.device)
		if !strings.ContainsFunc(device, unicode.IsLetter) || value.NamesColour(device) {
			return false
		}
		for _, i := range s.poles {
			cell := cellOf(r, i)
			if value.IsNothing(cell) {
				continue
			}
			if at := [2]string{table.Fold(device), cell}; !name.IsCavity(cell) || seen[at] {
				return false
			} else {
				seen[at] = true
			}
		}
	}
	return len(seen) > 0
}
