package say

import (
	"fmt"
	"strings"

	"contralay/calc/formula/crimp"
	"contralay/calc/query/lists"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// Crimp is strip, tool and contact of a cavity in one line; "" where nothing is known of it.
func Crimp(m *desk.Model, t int, cavity string) string {
	r, ok := lists.CrimpOf(m.Sheet, t, cavity)
	if !ok {
		size := m.Sheet.Terms[t].State[cavity].Size
		if size == "" {
			return ""
		}
		return "contact size " + size
	}
	return strings.Join(CrimpParts(m, r), ", ")
}

// CrimpParts is what a crimp is made with, what is set first before what is known anyway.
func CrimpParts(m *desk.Model, r lists.CrimpRow) []string {
	var out []string
	if r.StripMin > 0 {
		out = append(out, fmt.Sprintf("strip %s to %s", m.Sys.Diameter(r.StripMin), m.Sys.Diameter(r.StripMax)))
	}
	if r.Tool.Set {
		out = append(out, fmt.Sprintf("%s with %s~", r.Tool.V.Frame, r.Tool.V.Positioner))
		if r.Step > 0 {
			out = append(out, fmt.Sprintf("setting %d%s", r.Step, words.MemMark(r.StepGuess)))
		}
	} else {
		out = append(out, "tool: see its maker's sheet")
	}
	out = append(out, strings.TrimSpace("contact size "+r.Contact+" "+r.Part))
	if tool, ok := crimp.Insertion(r.Contact); ok && r.Circular {
		out = append(out, "insert with "+tool)
	}
	return out
}
