package inbars

import (
	"strings"

	"contralay/model/wirelist/columned"
)

// A text that is printed plain writes the headings of a table between stars, each of its own. A heading that is too wide for its column
// goes on in a second line. A cell of the last columns may go on in a line that has no pin.
//
//	*Probe*     *Target*   *Lead*     *Dock*
//	*plug*      *pins*     *colour*   *header*
//	1 (CLK)                Black
//	2 (GND)     GND        White      6
//	3 (RUN)     BEAT /     Red        1
//	            RST
//
// Two lines of headings without stars are such where each row begins with a pin and its name in brackets.

// starred are the lines of such a table at the front of some; nil where none stands there.
func starred(lines []string) (made []string) {
	heads, more, bare := starredCells(lines[0]), starredCells(lines[1]), false
	if heads == nil {
		heads, more, bare = bareHeads(lines[0]), bareHeads(lines[1]), true
	}
	if heads == nil || bare && more == nil {
		return nil
	}
	made = append(made, barred(texts(heads, heads)...))
	if more != nil {
		under := texts(heads, more)
		if under == nil {
			return nil
		}
		made = append(made, barred(under...))
	}
	rows, pins := paragraph(lines[len(made):], heads), 0
	var last []string // the row that a line without a pin goes on with
	at := 0
	for _, r := range rows {
		switch {
		case isPin(r[0]) && (!bare || strings.HasSuffix(r[0], ")")):
			pins++
			last, at = r, len(made)
			made = append(made, barred(r...))
		case r[0] == "" && last != nil:
			for k, c := range r {
				last[k] = joined(last[k], c)
			}
			made[at] = barred(last...)
			made = append(made, barred(make([]string, len(heads))...))
		default:
			return nil
		}
	}
	if pins < leastRows {
		return nil
	}
	return made
}

// starredCells are the cells of a line that stand between stars each, without them, two or more; nil where one does not.
func starredCells(line string) (all []columned.Field) {
	if !strings.HasPrefix(strings.TrimLeft(line, " \t"), "*") {
		return nil
	}
	for _, c := range columned.Gapped(line) {
		in := strings.Trim(c.Text, "*")
		stars := (len(c.Text) - len(in)) / 2
		if stars < 1 || stars > 2 || in == "" || strings.TrimSpace(in) != in || strings.ContainsAny(in, "|*") ||
			!strings.HasSuffix(c.Text, "*") || len(c.Text) != len(in)+2*stars {
			return nil
		}
		c.Text = in
		all = append(all, c)
	}
	if len(all) < 2 {
		return nil
	}
	return all
}

// bareHeads are the cells of a line that is set in and could be headings, two or more short words; nil where one could not.
func bareHeads(line string) (all []columned.Field) {
	const longest = 16 // bytes (no source)
	if !strings.HasPrefix(line, "  ") || strings.ContainsAny(line, "0123456789|:;,.()*") {
		return nil
	}
	if all = columned.Gapped(line); len(all) < 2 {
		return nil
	}
	for _, c := range all {
		if len(c.Text) > longest || strings.Trim(c.Text, "-= ") == "" {
			return nil
		}
	}
	return all
}

// texts are the texts of some cells below headings; nil where one stands below none.
func texts(heads, cells []columned.Field) []string {
	all := make([]string, len(heads))
	for _, c := range cells {
		k := under(heads, c)
		if k < 0 || all[k] != "" {
			return nil
		}
		all[k] = c.Text
	}
	return all
}

// joined is a cell with what goes on in the line below; a stroke at its end stands before another name of the pin.
func joined(cell, more string) string {
	if front, ok := strings.CutSuffix(cell, " /"); ok && more != "" {
		return front + " (" + more + ")"
	}
	return strings.TrimSpace(cell + " " + more)
}
