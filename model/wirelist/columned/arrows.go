package columned

import "strings"

// arrowSigns are the arrows that stand in lines of text, the longest first of those that hold another.
var arrowSigns = []string{"-->", "==>", "->", "=>", "→", "⇒", "➔", "➜"}

// Arrowed gives the cells of a line in columns that draws an arrow behind its first cell: near end, far end, and what stands in columns
// behind it; nil where it has no arrow, another one, or nothing in columns behind.
//
//	M1+  -> left motor   +   red
func Arrowed(line string) []string {
	for _, sign := range arrowSigns {
		near, far, ok := strings.Cut(line, sign)
		if !ok {
			continue
		}
		near = strings.TrimRight(near, "-=<─") // its shaft; "M1-  ->" is a pole before a blank
		if strings.HasPrefix(far, ">") || holdsArrow(far) || len(Gapped(near)) != 1 || !strings.HasPrefix(far, " ") {
			return nil
		}
		behind := Gapped(far)
		if len(behind) < 2 {
			return nil
		}
		cells := []string{strings.TrimSpace(near)}
		for _, c := range behind {
			cells = append(cells, c.Text)
		}
		return cells
	}
	return nil
}

func holdsArrow(text string) bool {
	for _, sign := range arrowSigns {
		if strings.Contains(text, sign) {
			return true
		}
	}
	return false
}

// isBarePad reports whether a near end is one word that names no connector, "M1+" and no "J4-1".
func isBarePad(text string) bool {
	bare := strings.TrimRight(text, "+-")
	return bare != "" && !strings.ContainsAny(bare, " :/-")
}

// isNamedCavity reports whether a near end is a number or a capital and a name behind it, "1 5V", "A ground": a point of a plug.
func isNamedCavity(text string) bool {
	pin, called, ok := strings.Cut(strings.TrimSpace(text), " ")
	return ok && called != "" && (strings.Trim(pin, "0123456789") == "" || len(pin) == 1 && pin[0] >= 'A' && pin[0] <= 'Z')
}

// StartsArrowed reports whether the first line of a text that has three cells or more draws an arrow behind a cavity, alone or with its
// name, so that no line names the columns, and most of these lines do.
func StartsArrowed(text string) bool {
	const looked = 200 // lines (no source)
	n, drawn, all := 0, 0, 0
	for line := range strings.SplitSeq(text, "\n") {
		if n++; n > looked {
			break
		}
		cells := Arrowed(line)
		is := cells != nil && (isBarePad(cells[0]) || isNamedCavity(cells[0]))
		if !is && len(Gapped(line)) < 3 {
			continue
		}
		if all++; is {
			drawn++
		}
		if all == 1 && !is {
			return false
		}
	}
	return drawn > 1 && 4*drawn >= 3*all
}
