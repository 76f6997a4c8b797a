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
func Spread(h shape.Headings, head table.Row, rows []table.Row) (table.Row, []table.Row) {
	if len(rows) < leastRows || len(rows) > mostRows {
		return head, rows
	}
	count, far, thing := columns(h, head)
	if count < 0 || !areCopies(rows, count, far) || !tells(head.Cells[count], rows, count) {
		return head, rows
	}
	made := slices.Clone(rows)
	for i, r := range rows {
		end := ""
		if number := cell(r, count); number != "" {
			end = thing + " " + number
		}
		made[i].Cells = spread(r.Cells, count, far, end)
	}
	head.Cells = spread(head.Cells, count, far, "To")
	head.Cells[slices.Index(head.Cells, "To")+1] = "To pin"
	return head, made
}

// spread is some cells without that of the number, and with the far end before its cavity.
func spread(cells []string, count, far int, end string) (made []string) {
	for i := range max(len(cells), count+1, far+1) {
		c := ""
		if i < len(cells) {
			c = cells[i]
		}
		switch i {
		case count:
		case far:
			made = append(made, end, c)
		default:
			made = append(made, c)
		}
	}
	return made
}

// columns are the column of the numbers and that of the far cavities, and the thing that these are of; count is −1 where the headings are
// of anything else. The near cavities are those of the connector above the table or of the one that their heading names.
func columns(h shape.Headings, head table.Row) (count, far int, thing string) {
	count, far = -1, -1
	near := -1
	for i, c := range head.Cells {
		folded := table.Fold(c)
		field := h.Words[strings.Join(name.Words(folded), " ")].Field
		switch device, pins := deviceOf(h, c); {
		case field == name.FieldFrom, field == name.FieldTo, field == name.FieldFromPin, field == name.FieldToPin,
			field == name.FieldRun, field == name.FieldConnector:
			return -1, -1, ""
		case near < 0 && (pins || field == name.FieldPin):
			near = i
		case pins || field == name.FieldPin:
			if far >= 0 || device == "" {
				return -1, -1, ""
			}
			far, thing = i, device
		case field == "" && isNoun(c):
			if count >= 0 {
				return -1, -1, ""
			}
			count = i
		}
	}
	if count < 0 || near < 0 || far < 0 {
		return -1, -1, ""
	}
	return count, far, thing
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
	numbers := !slices.ContainsFunc(rows, func(r table.Row) bool { return strings.Trim(cell(r, count), "0123456789") != "" })
	return slices.Contains(counted, w[0]) || numbers && (words.IsThing(w[0]) || words.HeadsThings(w) || rise(rows, count))
}

// rise reports whether the numbers count from one on, each once or some times below each other: then whatever heads them is counted.
func rise(rows []table.Row, count int) bool {
	last := 0
	for _, r := range rows {
		number := cell(r, count)
		if number == "" {
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
// the other.
func areCopies(rows []table.Row, count, far int) bool {
	pairs, cavities, numbers := map[[2]string]bool{}, map[string]bool{}, map[string]bool{}
	again := 0
	for _, r := range rows {
		number, cavity := cell(r, count), cell(r, far)
		if shape.IsText(r) || number == "" && cavity == "" {
			continue
		}
		pair := [2]string{number, table.Fold(cavity)}
		if !isNumber(number) || !isCavity(cavity) || pairs[pair] {
			return false
		}
		if cavities[pair[1]] {
			again++
		}
		pairs[pair], cavities[pair[1]], numbers[number] = true, true, true
	}
	return len(pairs) >= leastRows && len(numbers) > 1 && 3*again >= len(pairs)
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
