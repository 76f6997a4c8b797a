package runline

import (
	"regexp"
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// pinItem is one cavity and what it is for, in a line that tells those of a whole connector.
var pinItem = regexp.MustCompile(`^(?:(?i:pin|way|cav|cavity|broche|kammer|pen) )?#?(\w{1,4})(?: ?[:=] ?| [-–—] |\) ?|\. | )(\S.*)$`)

// PinsIn parts a line that tells all cavities of a connector behind its name; nil where it is none such.
//
//	J102 - 1: sensor ground, 2: reverse lamp, 3: n.c.        S102: A = horn; B = lamp        C1: 1 COIL 1, 2 SENSOR 5V
func PinsIn(cells []string) (connector string, pins []string) {
	front, first := "", ""
	for _, sign := range []string{": ", " - ", " – ", " — ", " = "} {
		if a, b, ok := strings.Cut(cells[0], sign); ok && (front == "" || len(a) < len(front)) {
			front, first = a, b
		}
	}
	const most = 4 // words of the name of a connector (no source)
	if front == "" || len(strings.Fields(front)) > most || strings.ContainsAny(front, ",;()") {
		return "", nil
	}
	items := append([]string{first}, slices.DeleteFunc(slices.Clone(cells[1:]), func(c string) bool { return c == "" })...)
	if len(items) == 1 {
		mark := ", "
		if strings.Contains(first, "; ") {
			mark = "; "
		}
		items = strings.Split(first, mark)
	}
	seen := map[string]bool{}
	for _, item := range items {
		m := pinItem.FindStringSubmatch(strings.TrimSpace(item))
		if m == nil || !name.IsCavity(m[1]) || seen[m[1]] || !strings.ContainsAny(m[1], "0123456789") && m[1] != strings.ToUpper(m[1]) {
			return "", nil
		}
		seen[m[1]] = true
		pins = append(pins, m[1]+": "+m[2])
	}
	if !slices.ContainsFunc(pins, func(p string) bool { return !point.IsColour(p[strings.Index(p, ": ")+2:]) }) {
		return "", nil // the legend of a code of colours
	}
	if countsThings(items) {
		return "", nil
	}
	const fewest = 3
	if len(pins) < fewest || !seen["1"] && !seen["01"] && !seen["A"] && !seen["A1"] && !seen["a"] {
		return "", nil
	}
	return front, pins
}

// countsThings reports whether the numbers that some items begin with count what is bought, "4 m braid, 2 backshells, 1 m heat shrink":
// a blank alone stands behind each, and one is followed by a unit or they do not rise.
func countsThings(items []string) bool {
	last, falls := 0, false
	for _, item := range items {
		number, rest, _ := strings.Cut(strings.TrimSpace(item), " ")
		at := name.Ordinal(number)
		if at == 0 || strings.Trim(number, "0123456789") != "" || rest == "" || strings.IndexByte("-:=)", rest[0]) >= 0 {
			return false
		}
		unit, _, more := strings.Cut(table.Fold(rest), " ")
		if more && slices.Contains([]string{"m", "mm", "cm", "x", "pcs", "pc", "off", "stk", "stuck", "pieces", "of"}, unit) {
			return true
		}
		falls = falls || at <= last
		last = at
	}
	return falls
}

// SpreadPins gives the connector of such a line a heading, and below it a table of its cavities, all of that line.
func SpreadPins(rows []table.Row) []table.Row {
	var out []table.Row
	// Some such line names a connector: "Notes: 1 cut, 2 strip, 3 crimp" does not.
	sure := slices.ContainsFunc(rows, func(r table.Row) bool {
		if len(r.Cells) == 0 || r.Level > 0 || r.Ruled {
			return false
		}
		connector, pins := PinsIn(r.Cells)
		return pins != nil && name.SaysConnector(connector)
	})
	if !sure {
		return rows
	}
	for i, r := range rows {
		var pins []string
		connector := ""
		if len(r.Cells) > 0 && r.Level == 0 && !r.Ruled {
			connector, pins = PinsIn(r.Cells)
		}
		if pins != nil && !name.SaysConnector(connector) && name.IsGeneric(connector) {
			pins = nil
		}
		if pins != nil && out == nil {
			out = slices.Clone(rows[:i])
		}
		if pins == nil {
			if out != nil {
				out = append(out, r)
			}
			continue
		}
		row := func(level int, cells ...string) {
			heads := level == 0 && cells[0] == "Pin"
			one := table.Row{Line: r.Line, Cells: cells, Level: level, Prose: level > 0, Ruled: heads, First: heads}
			out = append(out, one)
		}
		row(LowestHeading, connector)
		row(0, "Pin", "Signal")
		for _, p := range pins {
			pin, text, _ := strings.Cut(p, ": ")
			row(0, pin, text)
		}
	}
	if out == nil {
		return rows
	}
	return out
}

// LowestHeading is the level of a heading that stands below every other, for a text that is one only by what stands below it.
const LowestHeading = 6
