package wirelist_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"contralay/model/shorttest"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// chanceWire is one wire of a list that chance writes down.
type chanceWire struct{ box, pin, device, cavity, signal, size, colour, code string }

// chanceHeads are the headings of one language: cavities, names, colours, sizes, far ends, connectors, devices, and the word for a cavity
// beside the name of its device. Common words, from memory, no source.
type chanceHeads struct {
	pin, signal, colour, size, to, connector, device []string
	of                                               func(device string) string
	metric                                           bool
	hues                                             map[string]string
}

func chanceTongues() []chanceHeads {
	behind := func(d string) string { return d + " pin" }
	before := func(word string) func(string) string { return func(d string) string { return word + " " + d } }
	return []chanceHeads{
		{strings.Split("Pin|Pin #|Pin No.|Position|Cavity|Terminal|Pos|No.", "|"),
			strings.Split("Signal|Function|Description|Name|Signal Name|Circuit|Desc|Net|Use", "|"),
			strings.Split("Colour|Color|Wire colour|Wire|COLOR|Col", "|"), strings.Split("AWG|Gauge|Wire gauge|Size|Wire AWG", "|"),
			strings.Split("To|Destination|Goes to|Connects to|Dest|Wired to", "|"),
			strings.Split("Connector|Plug|Conn.|Connector ID", "|"),
			strings.Split("Device|Component|Sensor|Item|Part|Module", "|"), behind, false, nil},
		{strings.Split("Pin|Pin-Nr.|Kontakt|Klemme|Pos.", "|"), strings.Split("Signal|Funktion|Bezeichnung|Beschreibung", "|"),
			strings.Split("Farbe|Aderfarbe|Ader|Kabelfarbe", "|"), strings.Split("Querschnitt|mm²|QS|Querschnitt mm²", "|"),
			strings.Split("Ziel|nach|Geht an|Verbunden mit", "|"), strings.Split("Stecker|Steckverbinder", "|"),
			strings.Split("Bauteil|Gerät|Komponente", "|"), func(d string) string { return d + " Pin" }, true,
			map[string]string{"red": "rot", "blue": "blau", "green": "grün", "white": "weiß", "black": "schwarz", "brown": "braun"}},
		{strings.Split("Broche|Borne|N° broche|Voie", "|"), strings.Split("Fonction|Signal|Désignation", "|"),
			strings.Split("Couleur|Coul.|Couleur fil", "|"), strings.Split("Section|Section mm²|mm²", "|"),
			strings.Split("Vers|Destination|Arrivée", "|"), strings.Split("Connecteur|Prise", "|"),
			strings.Split("Composant|Appareil", "|"),
			before("Broche"), true,
			map[string]string{"red": "rouge", "blue": "bleu", "green": "vert", "white": "blanc", "black": "noir", "brown": "marron"}},
		{strings.Split("Pin|Polo|Morsetto", "|"), strings.Split("Funzione|Segnale|Descrizione", "|"),
			strings.Split("Colore|Colore filo", "|"), strings.Split("Sezione|mm²|Sez.", "|"),
			strings.Split("Destinazione|Verso|A", "|"),
			strings.Split("Connettore|Conn.", "|"), strings.Split("Componente|Dispositivo", "|"), before("Pin"), true,
			map[string]string{"red": "rosso", "blue": "blu", "green": "verde", "white": "bianco", "black": "nero", "brown": "marrone"}},
	}
}

// chance writes lists.
type chance struct {
	*rand.Rand
	h     chanceHeads
	wires []chanceWire
	to    string // how a far end is written
}

func (c *chance) one(of []string) string { return of[c.IntN(len(of))] }

// fill makes up the wires of two boxes.
func (c *chance) fill() {
	codes := map[string]string{"red": "2", "blue": "6", "green": "5", "white": "9", "black": "0", "brown": "1"}
	iec := map[string]string{"red": "RD", "blue": "BU", "green": "GN", "white": "WH", "black": "BK", "brown": "BN"}
	boxes := [][]string{{"ECU", "Dash"}, {"X1", "X2"}, {"J101", "J102"}, {"Controller", "PDM"}, {"C101", "C102"}}[c.IntN(5)]
	devices := [][]string{{"Ramp switch", "feed", "signal", "return"}, {"Lamp", "feed"}, {"Bilge pump", "feed", "return"}, {"CLT", "signal",
		"return"}, {"Horn", "out"}, {"Winch motor", "up", "down"}}
	c.Shuffle(len(devices), func(i, k int) { devices[i], devices[k] = devices[k], devices[i] })
	hues := []string{"red", "blue", "green", "white", "black", "brown"}
	n := map[string]int{}
	for i, d := range devices {
		box := boxes[i*len(boxes)/len(devices)]
		for k, what := range d[1:] {
			n[box] += 1 + c.IntN(2)
			hue, size := c.one(hues), c.one([]string{"22", "20", "18", "16"})
			w := chanceWire{box: box, pin: fmt.Sprint(n[box]), device: d[0], cavity: fmt.Sprint(k + 1), signal: d[0] + " " + what,
				size: size, colour: hue, code: codes[hue]}
			if c.h.metric {
				w.size, w.colour, w.code = c.one([]string{"0,5", "1,5", "0,35", "2,5"}), c.h.hues[hue], iec[hue]
			}
			c.wires = append(c.wires, w)
		}
	}
	c.to = c.one([]string{"%s:%s", "%s pin %s", "%s/%s", "%s (%s)"})
}

// values are the headings and the cells of what the wires are, in any order.
func (c *chance) values() (heads []string, cell func(w chanceWire) []string) {
	order := []int{0, 1, 2}
	c.Shuffle(3, func(i, k int) { order[i], order[k] = order[k], order[i] })
	all := []string{c.one(c.h.signal), c.one(c.h.colour), c.one(c.h.size)}
	for _, k := range order {
		heads = append(heads, all[k])
	}
	return heads, func(w chanceWire) (out []string) {
		size := w.size
		if c.h.metric {
			size += " mm²"
		}
		for _, k := range order {
			out = append(out, []string{w.signal, w.colour, size}[k])
		}
		return out
	}
}

// list writes the wires in one of the layouts; far says how much of the far ends it tells.
func (c *chance) list() (rows [][]string, layout string) {
	heads, cells := c.values()
	end := func(w chanceWire) string { return fmt.Sprintf(c.to, w.device, w.cavity) }
	switch c.IntN(6) {
	case 0: // a connector column
		rows = append(rows, slices.Concat([]string{c.one(c.h.connector), c.one(c.h.pin)}, heads, []string{c.one(c.h.to)}))
		once := c.IntN(2) == 0
		for k, w := range c.wires {
			box := w.box
			if once && k > 0 && c.wires[k-1].box == box {
				box = ""
			}
			rows = append(rows, slices.Concat([]string{box, w.pin}, cells(w), []string{end(w)}))
		}
		return rows, "connectors"
	case 1: // the far end in two columns
		rows = append(rows, slices.Concat([]string{c.one(c.h.connector), c.one(c.h.pin)}, heads, []string{c.one(c.h.to), c.one(c.h.pin)}))
		for _, w := range c.wires {
			rows = append(rows, slices.Concat([]string{w.box, w.pin}, cells(w), []string{w.device, w.cavity}))
		}
		return rows, "far cavities"
	case 2: // the device once, its cavities, and those of one box
		for k := range c.wires {
			c.wires[k].box, c.wires[k].pin = c.wires[0].box, fmt.Sprint(k+3)
		}
		rows = append(rows, slices.Concat([]string{c.one(c.h.device), c.one(c.h.pin)}, heads, []string{c.h.of(c.wires[0].box)}))
		for k, w := range c.wires {
			device := w.device
			if k > 0 && c.wires[k-1].device == device {
				device = ""
			}
			rows = append(rows, slices.Concat([]string{device, w.cavity}, cells(w), []string{w.pin}))
		}
		return rows, "devices once"
	case 3: // two columns of cavities that name their devices
		for k := range c.wires {
			w := &c.wires[k]
			w.box, w.device, w.pin, w.cavity = c.wires[0].box, "Winch board", fmt.Sprint(k+4), fmt.Sprint(k+1)
		}
		rows = append(rows, slices.Concat([]string{c.h.of(c.wires[0].box), c.h.of("Winch board")}, heads))
		for _, w := range c.wires {
			rows = append(rows, slices.Concat([]string{w.pin, w.cavity}, cells(w)))
		}
		return rows, "two devices"
	case 4: // a table for each box below its name
		head := slices.Concat([]string{c.one(c.h.pin)}, heads, []string{c.one(c.h.to)})
		for k, w := range c.wires {
			if k == 0 || c.wires[k-1].box != w.box {
				rows = append(rows, []string{w.box}, head)
			}
			rows = append(rows, slices.Concat([]string{w.pin}, cells(w), []string{end(w)}))
		}
		return rows, "tables below names"
	default: // one row of headings, the names of the boxes between the rows
		rows = append(rows, slices.Concat([]string{c.one(c.h.pin)}, heads, []string{c.one(c.h.to)}))
		for k, w := range c.wires {
			if k == 0 || c.wires[k-1].box != w.box {
				rows = append(rows, []string{w.box})
			}
			rows = append(rows, slices.Concat([]string{w.pin}, cells(w), []string{end(w)}))
		}
		return rows, "names between the rows"
	}
}

// A plain list comes right in whatever layout, order and language chance writes it: both ends, the name, the size and the colour of every
// wire, and no wire besides.
func TestPlainListsByChance(t *testing.T) {
	lists := 300
	if testing.Short() || !shorttest.Long() {
		lists = 60
	}
	first := rand.Uint64()
	for k := range lists {
		seed := first + uint64(k)
		c := &chance{Rand: rand.New(rand.NewPCG(seed, 1))}
		tongues := chanceTongues()
		c.h = tongues[c.IntN(len(tongues))]
		c.fill()
		rows, layout := c.list()
		var b strings.Builder
		for _, r := range rows {
			fmt.Fprintln(&b, strings.Join(r, ";"))
		}
		if says := c.check(b.String()); says != "" {
			t.Errorf("seed %d, %s: %s\n%s", seed, layout, says, b.String())
		}
	}
}

// check reads a list and says what is wrong; "" where nothing is.
func (c *chance) check(list string) string {
	tables, err := table.Read("list.csv", []byte(list), table.Limits{})
	if err != nil {
		return err.Error()
	}
	h, rep, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		return err.Error()
	}
	if len(h.Wires) != len(c.wires) {
		return fmt.Sprintf("%d wires, want %d\n%s", len(h.Wires), len(c.wires), strings.Join(rep.Full(), "\n"))
	}
	plain := func(s string) string { return name.Key(strings.ReplaceAll(s, ":", " ")) }
	for k, w := range c.wires {
		got := h.Wires[k]
		near, far := plain(w.box+" "+w.pin), plain(w.device+" "+w.cavity)
		ends := []string{plain(got.From.V), plain(got.To.V)}
		size := w.size
		if c.h.metric {
			size = strings.ReplaceAll(size, ",", ".") + "mm2"
		}
		says := got.Signal.V == w.signal && got.Size == size && got.Colour.V == w.code
		if !slices.Contains(ends, near) || !slices.Contains(ends, far) || !says {
			return fmt.Sprintf("row %d: %s to %s, %q, %s, %s, want %s:%s to %s:%s, %q, %s, %s\n%s", k+1, got.From.V, got.To.V, got.Signal.V,
				got.Size, got.Colour.V, w.box, w.pin, w.device, w.cavity, w.signal, size, w.code, strings.Join(rep.Full(), "\n"))
		}
	}
	return ""
}
