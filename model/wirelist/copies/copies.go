package copies

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

const (
	leastRows  = 3  // of such a table (no source)
	mostRows   = 99 // things of one kind are few (no source)
	mostNumber = 4  // bytes of the number of a thing, "12", "FL" (no source)
	mostCavity = 10 // bytes of a far cavity, "signal" (no source)
)

// Spread is the headings and the rows of a table, with columns for the far ends where it is one of several things of a kind: the same
// cavity of the thing comes again, which one thing can't have, and the number beside it tells them apart.
//
//	Cyl | ECU pin | Injector pin | Colour           ECU pin | To         | To pin | Colour
//	1   | A1      | 2            | green       ->   A1      | Injector 1 | 2      | green
//	2   | A2      | 2            | blue             A2      | Injector 2 | 2      | blue
//	3   | A3      | 2            | white            A3      | Injector 3 | 2      | white
//
// The far cavities may stand before those of the unit, and both headings may name what they are of alone, "Cylinder | ECU | Coil".
func Spread(h shape.Headings, head table.Row, rows []table.Row) (table.Row, []table.Row) {
	if len(rows) < leastRows || len(rows) > mostRows {
		return head, rows
	}
	for _, c := range columnsOf(h, head) {
		if !areCopies(rows, c) || !tells(head.Cells[c.count], rows, c.count) {
			continue
		}
		made := slices.Clone(rows)
		for i, r := range rows {
			if shape.IsText(r) {
				continue
			}
			end := ""
			if number := cell(r, c.count); number != "" {
				end = c.thing + " " + number
			}
			made[i].Cells = c.spread(r.Cells, end)
		}
		names := slices.Clone(head.Cells)
		side := "To"
		if names[c.far] = "To pin"; c.far < c.near {
			side, names[c.far] = "Device", "Pin" // as those are headed who begin with the things
		}
		if c.bare {
			names[c.near] += " pin"
		}
		head.Cells = c.spread(names, side)
		return head, made
	}
	return head, rows
}

// columns are the column of the numbers, that of the cavities of the things and that of the unit, and what a thing is called; bare: their
// headings have no word for cavities.
type columns struct {
	count, far, near int
	thing            string
	bare             bool
}

// spread is some cells without that of the number, and with the far end before its cavity.
func (c columns) spread(cells []string, end string) (made []string) {
	for i := range max(len(cells), c.count+1, c.far+1) {
		text := ""
		if i < len(cells) {
			text = cells[i]
		}
		switch i {
		case c.count:
		case c.far:
			made = append(made, end, text)
		default:
			made = append(made, text)
		}
	}
	return made
}

// columnsOf are the ways in which a table can be one of several things by its headings: one for its numbers, two for cavities.
func columnsOf(h shape.Headings, head table.Row) (all []columns) {
	var nouns, pins, bare []int // bare: those of pins that name no device
	unit := -1                  // a unit that lists call a connector as well, "Module"
	things := map[int]string{}
	for i, c := range head.Cells {
		field := h.Words[strings.Join(name.Words(table.Fold(c)), " ")].Field
		switch device, of := deviceOf(h, c); {
		case field == name.FieldFrom, field == name.FieldTo, field == name.FieldFromPin, field == name.FieldToPin,
			field == name.FieldRun, field == name.FieldConnector && (unit >= 0 || !words.HeadsUnit(name.Words(table.Fold(c)))):
			return nil
		case field == name.FieldConnector:
			unit = i
		case of:
			pins, things[i] = append(pins, i), device
		case field == name.FieldPin:
			bare = append(bare, i)
		case field == "" && (isNoun(c) || slices.Contains(counted, table.Fold(c))):
			nouns = append(nouns, i)
		}
	}
	switch {
	case unit >= 0 && len(pins)+len(bare) == 0:
		nouns = slices.Insert(nouns, 0, unit)
	case unit >= 0:
		return nil
	case len(pins) == 2 && len(bare) == 1 && len(nouns) == 0:
		nouns = bare // "Channel" counts beside the cavities of two things
	default:
		pins = append(pins, bare...)
		slices.Sort(pins)
	}
	switch {
	case len(pins) == 2 && len(nouns) == 1:
		for k, far := range pins {
			if things[far] != "" {
				all = append(all, columns{nouns[0], far, pins[1-k], things[far], false})
			}
		}
		slices.Reverse(all) // the things stand behind the unit more often
	case len(pins) == 0 && len(nouns) == 3:
		near := slices.IndexFunc(nouns, func(i int) bool { return words.HeadsUnit(name.Words(table.Fold(head.Cells[i]))) })
		if near < 0 {
			return nil
		}
		other := slices.Delete(slices.Clone(nouns), near, near+1)
		for k, count := range other {
			far := other[1-k]
			all = append(all, columns{count, far, nouns[near], head.Cells[far], true})
		}
	}
	return all
}

// deviceOf is the thing that a heading of cavities names, "Injector" of "Injector pin", "ESC" of "ESC wire"; "" where it names none that
// tells it from others, "Box pin". pins is whether the heading is one of cavities at all.
func deviceOf(h shape.Headings, head string) (device string, pins bool) {
	w := strings.Fields(head)
	if len(w) < 2 || len(w) > 3 {
		return "", false
	}
	last := table.Fold(w[len(w)-1])
	if !pinword.Is(last) && h.Words[last].Field != name.FieldPin && !slices.Contains([]string{"pad", "pads", "wire", "lead"}, last) {
		return "", false
	}
	device = strings.Join(w[:len(w)-1], " ")
	known := h.Words[strings.Join(name.Words(table.Fold(device)), " ")].Field != ""
	if (known || name.IsGeneric(device)) && !words.IsThing(device) { // "Sensor 1" tells enough
		return "", true
	}
	return device, true
}

// counted are words for what there is one thing each of, besides the things themselves. Common words, from memory, no source.
var counted = strings.Fields(`cyl cylinder zylinder zyl cylindre cilindro cilinder cylindr valec zone zona axis achse axe eje asse
	corner wheel rad roue rueda ruota wiel kolo arm bay station tank bank rotor engine`)

// isNoun reports whether a heading that nobody knows is one word, and none for values or remarks.
func isNoun(head string) bool {
	folded := table.Fold(head)
	w := name.Words(folded)
	return len(w) == 1 && strings.Trim(w[0], "0123456789") != "" && !name.IsRemark(w) && !name.IsMeasure(w) && !name.IsOtherHead(head) &&
		!words.IsOfValues(folded)
}

// tells reports whether the cells of a column tell things of a kind from each other: they count from one on, are numbers below a word
// for things, or what stands for a place below a word for places. Below "Sensor" a few letters are the name of the sensor.
func tells(head string, rows []table.Row, count int) bool {
	w := name.Words(table.Fold(head))
	numbers := !slices.ContainsFunc(rows, func(r table.Row) bool {
		return !shape.IsText(r) && strings.Trim(cell(r, count), "0123456789") != ""
	})
	return slices.Contains(counted, w[0]) || numbers && (words.IsThing(w[0]) || words.HeadsThings(w) || rise(rows, count))
}

// rise reports whether the numbers count from one on, each once or some times below each other: then whatever heads them is counted.
func rise(rows []table.Row, count int) bool {
	last := 0
	for _, r := range rows {
		number := cell(r, count)
		if number == "" || shape.IsText(r) {
			continue
		}
		at, err := strconv.Atoi(number)
		if err != nil || at != last && at != last+1 {
			return false
		}
		last = at
	}
	return last > 1
}

// areCopies reports whether a cavity comes again in the far column, each time beside another number, and every row that has the one has
// the other, with a cavity of the unit that no other row has.
func areCopies(rows []table.Row, c columns) bool {
	pairs, cavities, numbers, nears := map[[2]string]bool{}, map[string]bool{}, map[string]bool{}, map[string]bool{}
	again := 0
	for _, r := range rows {
		number, cavity, near := cell(r, c.count), cell(r, c.far), table.Fold(cell(r, c.near))
		if shape.IsText(r) || number == "" && cavity == "" {
			continue
		}
		pair := [2]string{number, table.Fold(cavity)}
		if !isNumber(number) || !isCavity(cavity) || pairs[pair] || near != "" && nears[near] {
			return false
		}
		if cavities[pair[1]] {
			again++
		}
		pairs[pair], cavities[pair[1]], numbers[number], nears[near] = true, true, true, true
	}
	return len(pairs) >= leastRows && len(numbers) > 1 && 3*again >= len(pairs) && len(nears) > 1
}

// isNumber reports whether a text tells a thing from others of its kind: a number, or a few capitals, "FL".
func isNumber(text string) bool {
	return text != "" && len(text) <= mostNumber && strings.Trim(text, "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789") == ""
}

// isCavity reports whether a text can be a cavity of a thing or the name of its lead, and no colour.
func isCavity(text string) bool {
	if text == "" || len(text) > mostCavity || strings.ContainsAny(text, " ,;/") || value.NamesColour(text) {
		return false
	}
	return name.IsCavity(text) || text == "+" || text == "-" || name.StateOf(text) == name.Used && !value.IsNothing(text)
}

// cell is the text of a row in a column; "" where it has none there.
func cell(r table.Row, i int) string {
	if i < len(r.Cells) {
		return strings.TrimSpace(r.Cells[i])
	}
	return ""
}
