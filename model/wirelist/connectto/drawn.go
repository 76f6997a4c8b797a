package connectto

import (
	"regexp"
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// A how-to draws an arrow from each pin of a port to what the thing calls its wire. A later sentence adds a line for the same thing.
//
//	For the plain bell push solder the wires onto the gate port this way:
//
//	  (pin 1) -----> Supply
//	  (pin 3) -----> Ring
//
//	For pushes with a lamp solder its feed to pin 7 on the gate port:
//
//	  (pin 7) -----> Lamp

// arrowed is such a line that no other package has read: an arrow of one dash, or one in a document.
var arrowed = regexp.MustCompile(`^\(?(?:(?i:pin|stift|broche) ?)?([A-Z]?\d{1,3})\)? ?(?:-+>|=+>|→) ?([^\s(-][^()>,;]{0,23})$`)

// pinRows are the pins of such lines from row i on and their names; nil where they are none.
func pinRows(rows []table.Row, i int) (all []table.Row) {
	seen := map[string]bool{}
	for n := 0; i+n < len(rows) && len(rows[i+n].Cells) == 1 && rows[i+n].Line == rows[i].Line+n; n++ {
		m := arrowed.FindStringSubmatch(rows[i+n].Cells[0])
		if m == nil || seen[m[1]] {
			return nil
		}
		seen[m[1]] = true
		all = append(all, cellsOf(rows[i+n], m[1], strings.TrimSpace(m[2])))
	}
	if len(all) < leastRows {
		return nil
	}
	return all
}

// drawn are the rows of such a table of drawn lines whose headings are row i, the thing, and how many rows they were; nil where they are
// none. before is the thing of the lines above.
func drawn(rows []table.Row, i int, before string) (made []table.Row, thing string, n int) {
	if !slices.Equal(rows[i].Cells, []string{"Pin", "Signal"}) || i+1 >= len(rows) || rows[i+1].Line != rows[i].Line {
		return nil, "", 0
	}
	thing, place, ok := both(sentence(rows, i))
	if !ok {
		return nil, "", 0
	}
	if before != "" && lastWord(before) == lastWord(thing) {
		thing = before
	}
	for n = 1; i+n < len(rows) && !rows[i+n].Prose && len(rows[i+n].Cells) == 2 && !rows[i+n].First; n++ {
		made = append(made, rows[i+n])
		made[n-1].Cells = []string{place, rows[i+n].Cells[0], thing, rows[i+n].Cells[1], rows[i+n].Cells[1]}
	}
	first := rows[i]
	first.Cells = []string{"From", "From pin", "To", "To pin", "Signal"}
	return append([]table.Row{first}, made...), thing, n
}

// arrows are the rows of such lines from row i on that no other package has read, the thing, and how many they are; nil where they are
// none.
func arrows(t *table.Table, rows []table.Row, i int) (made []table.Row, thing string, n int) {
	all := pinRows(rows, i)
	if all == nil {
		return nil, "", 0
	}
	thing, place, ok := both(sentence(rows, i))
	if !ok {
		return nil, "", 0
	}
	made = append(made, head(t, rows[i].Line, "From", "From pin", "To", "To pin", "Signal"))
	for _, r := range all {
		r.Cells = []string{place, r.Cells[0], thing, r.Cells[1], r.Cells[1]}
		made = append(made, r)
	}
	return made, thing, len(all)
}
