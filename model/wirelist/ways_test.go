package wirelist_test

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/shorttest"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// wayWire is one wire of a small harness that is written down in many ways.
type wayWire struct{ plug, pin, device, cavity, signal, colour, size string }

func wayWires() []wayWire {
	return []wayWire{
		{"X1", "1", "Fuel pump", "+", "pump feed", "red", "20"},
		{"X1", "2", "Fuel pump", "-", "pump ground", "black", "20"},
		{"X1", "3", "Cam sensor", "A", "cam supply", "white/blue", "22"},
		{"X1", "4", "Cam sensor", "B", "cam data", "green", "22"},
		{"X2", "1", "Main relay", "85", "relay coil", "yellow", "18"},
		{"X2", "2", "Main relay", "86", "relay return", "brown", "18"},
	}
}

// farWays are the ways in which an end is written in one piece: a device and its cavity.
func farWays() map[string]func(of, pin string) string {
	return map[string]func(of, pin string) string{
		"colon":     func(of, pin string) string { return of + ":" + pin },
		"pin":       func(of, pin string) string { return of + " pin " + pin },
		"dash":      func(of, pin string) string { return of + " - " + pin },
		"long dash": func(of, pin string) string { return of + " – " + pin },
		"slash":     func(of, pin string) string { return of + "/" + pin },
		"brackets":  func(of, pin string) string { return of + " (" + pin + ")" },
		"of":        func(of, pin string) string { return "pin " + pin + " of " + of },
		"comma":     func(of, pin string) string { return of + ", pin " + pin },
	}
}

// wayRead imports a list and counts the wires that are right; says is the report.
func wayRead(t *testing.T, file, text string) (right, wires int, says string) {
	t.Helper()
	tables, err := table.Read(file, []byte(text), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, rep, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		return 0, 0, err.Error()
	}
	for _, w := range wayWires() {
		for _, got := range h.Wires {
			if got.Signal.V == w.signal && wayEnds(&h, got) == w.plug+":"+w.pin+" "+w.device+":"+w.cavity && got.Size == w.size {
				right++
				break
			}
		}
	}
	return right, len(h.Wires), strings.Join(rep.Full(), "\n")
}

// wayEnds names the ends of a wire as the list calls them.
func wayEnds(h *model.Harness, w model.Wire) string {
	called := func(text string) string {
		e, _ := model.ParseEnd(text)
		for _, t := range h.Terminations {
			if t.ID == e.Termination && t.Name.Set && !strings.HasPrefix(t.Name.V, t.ID+" ") { // "X1 6-way plug" is X1
				return t.Name.V + ":" + e.Cavity
			}
		}
		return e.Termination + ":" + e.Cavity
	}
	return called(w.From.V) + " " + called(w.To.V)
}

// A harness of six wires comes right in whatever usual way it is written down, and nothing is invented.
func TestWaysToWriteAList(t *testing.T) {
	if testing.Short() {
		t.Skip("the race detector takes ten times as long, and nothing runs beside it")
	}
	n, turn := 0, rand.IntN(3)
	hold := func(what, file, text string) {
		if n++; n%3 != turn && !shorttest.Long() { // a third, another one in the next run
			return
		}
		if right, wires, says := wayRead(t, file, text); right != len(wayWires()) || wires != right {
			t.Errorf("%s: %d right of %d wires\n%s\n%s", what, right, wires, text, says)
		}
	}
	for far, end := range farWays() {
		for _, mark := range []string{"- ", "* ", ""} {
			for _, arrow := range []string{" -> ", " → ", " => "} {
				for _, tail := range []string{" : ", " | ", ", ", " - "} {
					if far == "comma" && tail == ", " || tail == " - " && strings.Contains("pin of comma", far) {
						continue // a comma or a dash is of the end as well
					}
					for _, between := range []string{", ", " / "} {
						var b strings.Builder
						b.WriteString("# Loom\n\n")
						for _, w := range wayWires() {
							fmt.Fprintf(&b, "%s%s%s%s%s%s\n", mark, end(w.plug, w.pin), arrow, end(w.device, w.cavity), tail,
								strings.Join([]string{w.signal, w.colour, w.size + " AWG"}, between))
						}
						hold("both ends, "+far+mark+arrow+tail+between, "l.md", b.String())
					}
				}
			}
			for _, sep := range []string{" - ", ", ", " | ", " – "} {
				if far == "dash" && sep == " - " || far == "comma" && sep == ", " || mark == "" && (sep == ", " || sep == " | ") {
					continue
				}
				for _, arrow := range []string{" -> ", " → ", sep + "to "} {
					var b strings.Builder
					plug := ""
					for _, w := range wayWires() {
						if w.plug != plug {
							plug = w.plug
							fmt.Fprintf(&b, "\n## %s\n\n", plug)
						}
						fmt.Fprintf(&b, "%s%s%s%s\n", mark, strings.Join([]string{w.pin, w.colour, w.size + " AWG", w.signal}, sep), arrow,
							end(w.device, w.cavity))
					}
					hold("points, "+far+mark+sep+arrow, "l.md", b.String())
				}
			}
		}
		if far == "brackets" {
			continue // behind two words in a cell they are a remark as often
		}
		for _, pin := range []string{"Pin", "Pos", "No.", "Cavity", "Position", "#"} {
			for _, to := range []string{"To", "Goes to", "Destination", "Connects to"} {
				var md strings.Builder
				plug := ""
				for _, w := range wayWires() {
					if w.plug != plug {
						plug = w.plug
						fmt.Fprintf(&md, "\n## %s\n\n| %s | Signal | Colour | AWG | %s |\n|---|---|---|---|---|\n", plug, pin, to)
					}
					fmt.Fprintf(&md, "| %s | %s | %s | %s | %s |\n", w.pin, w.signal, w.colour, w.size, end(w.device, w.cavity))
				}
				hold("pin table, "+far+pin+to, "l.md", md.String())
			}
		}
		for _, heads := range []string{"From;To", "Source;Destination", "End A;End B", "Start;End"} {
			text := heads + ";Signal;Colour;AWG\n"
			for _, w := range wayWires() {
				text += strings.Join([]string{end(w.plug, w.pin), end(w.device, w.cavity), w.signal, w.colour, w.size}, ";") + "\n"
			}
			hold("from and to, "+far+heads, "l.csv", text)
		}
	}
	for _, pin := range []string{"Pin", "Pos", "No.", "Cavity", "Position"} {
		for _, far := range []string{"To;To pin", "To;Far pin", "Device;Device pin", "Destination;Pin there", "To device;Dest pin"} {
			text, split := "Connector;"+pin+";Signal;Colour;AWG;"+far+"\n", ""
			for _, w := range wayWires() {
				text += strings.Join([]string{w.plug, w.pin, w.signal, w.colour, w.size, w.device, w.cavity}, ";") + "\n"
				if len(split) == 0 || !strings.Contains(split, w.plug) {
					split += "\n" + w.plug + "\n" + pin + ";Signal;Colour;AWG;" + far + "\n"
				}
				split += strings.Join([]string{w.pin, w.signal, w.colour, w.size, w.device, w.cavity}, ";") + "\n"
			}
			hold("one table, "+pin+far, "l.csv", text)
			hold("a table for each plug, "+pin+far, "l.csv", split)
		}
	}
	for _, see := range []string{"see %s-%s", "see %s pin %s", "same as %s:%s", "(see %s/%s)", "siehe %s.%s"} {
		text, back := "Connector;Pin;Signal;Colour;AWG;To\n", ""
		for _, w := range wayWires() {
			text += strings.Join([]string{w.plug, w.pin, w.signal, w.colour, w.size, w.device + ":" + w.cavity}, ";") + "\n"
			back += w.device + ";" + w.cavity + ";" + fmt.Sprintf(see, w.plug, w.pin) + ";;;\n"
		}
		hold("told again, "+see, "l.csv", text+back)
	}
	for _, title := range []string{"%s", "%s plug", "%s   6-way plug", "%s   socket, dash side", "%s   round   lid side"} {
		for _, rule := range []string{"", "----------------------------------------\n", "\n"} {
			text, plug := "Loom of the shed\n", ""
			for _, w := range wayWires() {
				if w.plug != plug {
					plug = w.plug
					text += "\n" + fmt.Sprintf(title, plug) + "\n" + rule + "Pin  Signal        AWG  Colour      To\n"
				}
				text += fmt.Sprintf("%-4s %-13s %-4s %-11s %s\n", w.pin, w.signal, w.size, w.colour, w.device+":"+w.cavity)
			}
			hold("columns of a text, "+title+rule, "l.txt", text)
		}
	}
	t.Logf("%d ways", n)
}
