package connectto

import (
	"regexp"
	"strings"

	"contralay/model/wirelist/columned"
	"contralay/model/wirelist/table"
)

// A remark says on which plugs of a board the signals of a port are. Behind the plug and its pad stands the port and its signal, or a
// sentence that says what the pad may be used for; it may go on in the next line. Where either of two plugs will do the first counts, and
// the note has both.
//
//	Places of the BELL lines:
//	CN2 IO4        BELL GONG
//	CN2 IO5        BELL LIFT
//	CN2 IO7        BELL STOP
//	CN1 +3V3       May serve as BELL VREF
//	CN1 or CN2 GND May serve for BELL GND
var (
	location = regexp.MustCompile(`(?i)^(?:(?:location|position|place)s? of (?:the )?|lage der |position der )([\pL\d]+)[ -]` +
		`(?:pins|signals|lines|pads|signale|anschlüsse):$`)
	padOf = regexp.MustCompile(`^([A-Z]{1,2}\d{1,2})((?: or | oder |/)[A-Z]{1,2}\d{1,2})? (\S+)$`)
)

// located are the rows of such lines from row i on, those whose far end stands in a sentence, and how many lines they are; nil where they
// are none.
func located(t *table.Table, rows []table.Row, i int) (made, spoken []table.Row, n int) {
	if !isText(rows[i-1]) || rows[i-1].Line+2 < rows[i].Line {
		return nil, nil, 0
	}
	m := location.FindStringSubmatch(rows[i-1].Cells[0])
	if m == nil {
		return nil, nil, 0
	}
	port, plain := m[1], 0
	for ; i+n < len(rows) && rows[i+n].Line == rows[i].Line+n && isText(rows[i+n]); n++ {
		parts := columned.Gapped(strings.ReplaceAll(rows[i+n].Raw, "\t", "  "))
		if len(parts) == 1 && len(made) > 0 && rows[i+n].Raw != strings.TrimLeft(rows[i+n].Raw, " \t") {
			last := &made[len(made)-1]
			last.Cells[5] = strings.TrimSpace(last.Cells[5] + " " + parts[0].Text)
			last.Spans = max(last.Spans, 1) + 1
			continue
		}
		if len(parts) != 2 {
			return nil, nil, 0
		}
		p := padOf.FindStringSubmatch(parts[0].Text)
		if p == nil {
			return nil, nil, 0
		}
		cells := []string{p[1], p[3], "", "", "", parts[1].Text}
		if w := strings.Fields(parts[1].Text); len(w) == 2 && w[0] == port {
			plain++
			cells = []string{p[1], p[3], port, w[1], w[1], ""}
		}
		if p[2] != "" {
			cells[5] = parts[0].Text + ": " + cells[5]
		}
		made = append(made, cellsOf(rows[i+n], cells...))
	}
	if plain < leastRows {
		return nil, nil, 0
	}
	signal := regexp.MustCompile(`\b` + regexp.QuoteMeta(port) + ` ([\pL\d_/+-]+)`)
	for k := range made {
		c := made[k].Cells
		if at := signal.FindStringSubmatch(c[5]); at != nil && c[2] == "" {
			c[2], c[3] = port, at[1]
			spoken = append(spoken, made[k])
		}
	}
	return append([]table.Row{head(t, rows[i].Line, "From", "From pin", "To", "To pin", "Signal", "Note")}, made...), spoken, n
}
