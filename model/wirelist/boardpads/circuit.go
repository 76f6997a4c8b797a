package boardpads

import (
	"regexp"
	"slices"
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// A program says in a remark which circuit it is for: below a line that says so, the pads of the board by their kind and number, each with
// what lies on it. What the board is called it does not say; the texts above name what is wired to it.
//
//	Tilt meter TM3
//
//	The circuit:
//	- analog 0: sag of the jib                 Connector   | Pin      | Signal
//	- analog 1: east lean                 ->   Connector 1 | analog 0 | sag of the jib
//	- digital 7: ready                         Connector 1 | analog 1 | east lean
var (
	padOfKind = regexp.MustCompile(`^((?i:analog|digital|pwm)(?: (?i:in|input|out|output|pin))? \d{1,2}|[AD]\d{1,2})` +
		`(?::| -| =)[ \t]+(\S.*)$`)
	saysCircuit = regexp.MustCompile(`(?i)^(?:the |die |der |le |la |el |il |de )?(?:circuit|wiring|connections|hookup|hook-up|schaltung|` +
		`verdrahtung|anschlüsse|montage|branchement|câblage|circuito|conexiones|cableado|collegamenti|cablaggio|aansluitingen):?$`)
)

// Circuit are the rows of a sheet, those of such lines made a table; unnamed are the rows of each.
func Circuit(h shape.Headings, t *table.Table) (rows []table.Row, unnamed [][]table.Row) {
	rows = t.Rows
	if h.HeadLine() > 0 || h.Numbered() || h.Recipe != nil {
		return rows, nil
	}
	for i := 1; i+leastRows <= len(rows); i++ {
		title := rows[i-1]
		if len(title.Cells) != 1 || title.Level == 0 && !strings.HasSuffix(title.Cells[0], ":") ||
			!saysCircuit.MatchString(title.Cells[0]) || rows[i].Line > title.Line+2 {
			continue // most rows
		}
		made := padsOfKinds(rows[i:])
		if len(made) < leastRows {
			continue
		}
		head := table.Row{Line: rows[i].Line, Cells: []string{"Connector", "Pin", "Signal"}, Made: true, First: t.Marked, Ruled: t.Marked}
		rows = slices.Concat(rows[:i], []table.Row{head}, made, rows[i+len(made):])
		unnamed = append(unnamed, made)
		i += len(made)
	}
	return rows, unnamed
}

// padsOfKinds are the lines that some rows begin with, in two cells, up to the end of their paragraph; nil where one of it is another.
func padsOfKinds(rows []table.Row) (made []table.Row) {
	const longest = 48 // bytes of what lies on a pad (no source)
	seen := map[string]bool{}
	for k, r := range rows {
		if k > 0 && r.Line != rows[k-1].Line+1 {
			break
		}
		if len(r.Cells) != 1 || r.Level > 0 {
			return nil
		}
		m := padOfKind.FindStringSubmatch(r.Cells[0])
		if m == nil || len(m[2]) > longest || !strings.ContainsFunc(m[2], isLetter) || seen[m[1]] {
			return nil
		}
		seen[m[1]] = true
		one := r
		one.Cells, one.Gap, one.Drawn, one.Raw = []string{"Connector 1", m[1], m[2]}, nil, nil, ""
		one.Prose, one.Point, one.Deep = false, false, 0
		made = append(made, one)
	}
	return made
}

func isLetter(r rune) bool { return r|0x20 >= 'a' && r|0x20 <= 'z' || r > 127 }
