package wirelist_test

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"contralay/model/shorttest"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// plainWires are those of a plain list: id, both ends, name, size, colour.
var plainWires = [][8]string{
	{"W1", "PDM", "1", "Fan", "3", "Fan feed", "12", "red"},
	{"W2", "PDM", "2", "Pump", "1", "Pump feed", "14", "red/white"},
	{"W3", "ECU", "7", "Fan", "2", "Fan sense", "20", "black"},
	{"W4", "ECU", "14", "Relay", "85", "Fan control", "20", "blue"},
	{"W5", "ECU", "15", "CLT", "1", "Temp", "22", "green/white"},
	{"W6", "ECU", "16", "CLT", "2", "Temp ret", "22", "brown"},
}

// plainList writes those wires below some headings, each as row says, and reads them again; what is wrong is told in one line.
func plainList(t *testing.T, way string, heads []string, row func(w [8]string) []string) {
	t.Helper()
	var b strings.Builder
	fmt.Fprintln(&b, strings.Join(heads, ";"))
	for _, w := range plainWires {
		fmt.Fprintln(&b, strings.Join(row(w), ";"))
	}
	tables, err := table.Read("l.csv", []byte(b.String()), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, rep, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		t.Errorf("%s: %v", way, err)
		return
	}
	if len(h.Wires) != len(plainWires) {
		t.Errorf("%s: %d wires\n%s", way, len(h.Wires), strings.Join(rep.Full(), "\n"))
		return
	}
	for k, w := range plainWires {
		got, want := h.Wires[k], w[1]+":"+w[2]+" "+w[3]+":"+w[4]
		colour := w[7]
		if ends := wayEnds(&h, got); ends != want || got.Signal.V != w[5] || got.Size != w[6] || got.Colour.V != hueCodes[colour] {
			t.Errorf("%s: %s, %q, %s, %s, want %s, %q, %s, %s", way, ends, got.Signal.V, got.Size, got.Colour.V, want, w[5], w[6],
				hueCodes[colour])
			return
		}
	}
	for _, l := range rep.Full() {
		if strings.Contains(l, ": warn: ") && !strings.Contains(l, "a column that is not understood") { // one that stands beside the ends
			t.Errorf("%s: a plain list, and %s", way, l)
		}
	}
}

// hueCodes are the colours of those wires as the harness writes them.
var hueCodes = map[string]string{"red": "2", "red/white": "29", "black": "0", "blue": "6", "green/white": "59", "brown": "1"}

// A list of both ends comes right whatever word heads the devices and their cavities.
func TestWaysToHeadDevices(t *testing.T) {
	heads := strings.Split(`Source Device|Source Pin|Target Device|Target Pin
Source|Source Pin|Sink|Sink Pin
Start|Start pin|End|End pin
Origin|Pin|Destination|Pin
Near end|Near pin|Far end|Far pin
End A|Term A|End B|Term B
Component A|Pin A|Component B|Pin B
Node A|Pin A|Node B|Pin B
Board 1|Header pin 1|Board 2|Header pin 2
Connector1|Pin1|Connector2|Pin2
Left Connector|Left Pin|Right Connector|Right Pin
1st Connector|1st Pin|2nd Connector|2nd Pin
Module|Module pin|Sensor|Sensor pin
ECU plug|ECU pin|Sensor|Sensor pin
Host|Host pin|Peripheral|Peripheral pin
Loom plug|Loom pin|Device plug|Device pin
From where|Pin|To where|Pin
conn_from|pin_from|conn_to|pin_to
A-Side|A-Pin|B-Side|B-Pin
Gerät 1|Klemme 1|Gerät 2|Klemme 2
Appareil origine|Borne|Appareil destination|Borne
Partenza|Pin partenza|Arrivo|Pin arrivo
Från|Stift|Till|Stift`, "\n")
	turn := rand.IntN(3)
	for k, line := range heads {
		if k%3 != turn && !shorttest.Long() {
			continue
		}
		of := strings.Split(line, "|")
		plainList(t, line, append(append([]string{"Wire"}, of...), "Signal", "AWG", "Colour"), func(w [8]string) []string { return w[:] })
		plainList(t, "without ids, "+line, append(append([]string{}, of...), "Function", "Gauge", "Color"),
			func(w [8]string) []string { return w[1:] })
	}
}

// An end in one cell comes right whatever stands between the device and its cavity.
func TestWaysToWriteAnEnd(t *testing.T) {
	for _, way := range []string{"%s:%s", "%s-%s", "%s.%s", "%s/%s", "%s_%s", "%s=%s", "%s>%s", "%s (%s)", "%s[%s]", "%s #%s", "%s, %s",
		"%s - %s", "%s pin %s", "%s pin%s", "%s-pin%s", "%s.pin%s", "%s Pin-%s", "%s p%s", "%s P.%s", "%s pos %s", "%s contact %s",
		"%s terminal %s", "%s cav %s", "pin %[2]s %[1]s", "pin %[2]s of %[1]s", "%[2]s@%[1]s"} {
		plainList(t, way, []string{"Wire", "From", "To", "Signal", "AWG", "Colour"}, func(w [8]string) []string {
			return []string{w[0], fmt.Sprintf(way, w[1], w[2]), fmt.Sprintf(way, w[3], w[4]), w[5], w[6], w[7]}
		})
	}
}

// Numbers behind a sign may count devices, and then they are no cavities.
func TestCountedDevicesAreWhole(t *testing.T) {
	for _, way := range []string{"Lamp_%d", "Lamp no.%d", "Lamp=%d"} {
		list := "Pin,Signal,AWG,To\n"
		for i := 1; i < 6; i++ {
			list += fmt.Sprintf("%d,light %d,22,"+way+"\n", i, i, i)
		}
		tables, err := table.Read("l.csv", []byte(list), table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		h, _, err := wirelist.Import(tables, draft.Options{})
		if err != nil {
			t.Fatal(err)
		}
		if len(h.Terminations) != 6 { // the plug and five lamps
			t.Errorf("%s: %d terminations, want 6", way, len(h.Terminations))
		}
	}
}

// A size and a colour come right in the ways of catalogues and of drawings.
func TestWaysToWriteASize(t *testing.T) {
	for _, way := range []string{"%s", "%sAWG", "AWG%s", "AWG %s", "%s ga", "#%s", "%s gauge", "%s-AWG", "%sGA", "%s#"} {
		plainList(t, way, []string{"Wire", "From", "Pin", "To", "Pin", "Signal", "AWG", "Colour"}, func(w [8]string) []string {
			w[6] = fmt.Sprintf(way, w[6])
			return w[:]
		})
	}
	for _, way := range []string{"%s/%s", "%s-%s", "%s %s", "%s w/ %s stripe", "%s with %s tracer", "%s (%s)", "%s+%s", "%s, %s stripe",
		"%[2]s stripe on %[1]s", "%s %s-striped", "%s / %s"} {
		plainList(t, way, []string{"Wire", "From", "Pin", "To", "Pin", "Signal", "AWG", "Colour"}, func(w [8]string) []string {
			if main, stripe, ok := strings.Cut(w[7], "/"); ok {
				w[7] = fmt.Sprintf(way, main, stripe)
			}
			return w[:]
		})
	}
}

// What is fitted to the ends, counted or noted of them stands in columns of its own, and is no cavity, no size and no wire.
func TestColumnsBesideTheEnds(t *testing.T) {
	of := map[string]string{
		"Terminal":     "M20|M20|R516|Q250|SPL|M18",
		"Term.":        "F-16|F-16|F-20|L-M6|F-20|F-20",
		"Strip":        "5|5|7|7|5|5",
		"Strip length": "5 mm|5 mm|7 mm|7 mm|5 mm|5 mm",
		"Seal":         "yes|yes||yes|no|",
		"Seal colour":  "red|red|blue||red|red",
		"Contact":      "20|20|20|16|20|20",
		"Crimp":        "AT20|AT20|AT20|AT16|AT20|AT20",
		"Part no.":     "120-441|120-441|120-442|120-443|120-441|120-441",
		"Boot":         "222K|222K||222K||",
		"Qty":          "1|1|1|1|1|1",
		"Sheet":        "1|1|1|2|2|2",
		"Zone":         "front|front|front|rear|rear|rear",
		"Voltage":      "12|12|5|12|5|5",
		"Weight (g)":   "8|6|2|4|3|3",
		"Bin":          "12|14|11|9|8|8",
		"Ferrule":      "1.5|1.5||||",
		"Gland":        "M16|M16||M20||",
		"Sleeve":       "3 mm|3 mm||||",
		"Tool":         "HT-4|HT-4|HT-4|HT-9|HT-4|HT-4",
		"Torque":       "|||6 Nm||",
		"Position":     "10|20|30|40|50|60",
		"Gender":       "M|M|F|F|M|M",
		"Plating":      "Au|Au|Sn|Sn|Au|Au",
		"Checked":      "KM|KM|KM|||",
	}
	for head, text := range of {
		cells := strings.Split(text, "|")
		for _, ends := range []bool{false, true} { // both ends in one cell each
			for _, heads := range [][2]string{{"", head}, {head + " 1", head + " 2"}, {head, head}} {
				names := []string{"Wire", "From", "Pin", heads[0], "To", "Pin", heads[1], "Signal", "AWG", "Colour"}
				if ends {
					names = []string{"Wire", "From", heads[0], "To", heads[1], "Signal", "AWG", "Colour"}
				}
				k := -1
				plainList(t, strings.Join(names, " | "), withoutEmpty(names, names), func(w [8]string) []string {
					k++
					row := []string{w[0], w[1], w[2], cells[len(cells)-1-k], w[3], w[4], cells[k], w[5], w[6], w[7]}
					if ends {
						row = []string{w[0], w[1] + "-" + w[2], cells[len(cells)-1-k], w[3] + "-" + w[4], cells[k], w[5], w[6], w[7]}
					}
					return withoutEmpty(names, row)
				})
			}
		}
	}
}

// withoutEmpty is the cells of a row whose column has a heading.
func withoutEmpty(heads, row []string) (all []string) {
	for i, c := range row {
		if heads[i] != "" {
			all = append(all, c)
		}
	}
	return all
}
