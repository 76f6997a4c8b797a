package join

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// plugs are the cavities of the names in each connector of a list.
type plugs struct {
	im    *draft.Importer
	nets  map[*draft.Term]map[string]string // the cavity of each net
	apart []*draft.Item                     // the rows that were not joined
}

// look takes in, once, which names stand in which cavities.
func (p *plugs) look() {
	if p.nets != nil {
		return
	}
	p.nets = map[*draft.Term]map[string]string{}
	for _, it := range p.im.Items {
		if it.Net == "" || it.From.Term == nil || it.State == name.Spare {
			continue
		}
		if p.nets[it.From.Term] == nil {
			p.nets[it.From.Term] = map[string]string{}
		}
		p.nets[it.From.Term][it.Net] = it.From.Pin
	}
}

// all reports whether three connectors or more have the same names in the same cavities, three of them at least, and none has
// another: they are plugs of one kind, at a motor each, and no wire runs from one to the next.
//
//	Connector | Pin | Signal
//	X2 axis X | 1   | Coil A+
//	          | 2   | Coil A-
//	          | 3   | Limit
//	X3 axis Y | 1   | Coil A+
func (p *plugs) all(terms []*draft.Term) bool {
	const least = 3 // no source
	return len(terms) >= least && p.same(terms, least)
}

// devices reports whether two connectors or more have the same two names or more in the same cavities, and are of one kind of device: the
// motors of two axes, the left and the right lamp. One of them may have more names than the others, as the motor with the switch has. No
// wire runs from one to the next.
//
//	Left wheel motor       Right wheel motor
//	1 | A                  1 | A
//	2 | B                  2 | B
//	                       3 | home switch
func (p *plugs) devices(terms []*draft.Term) bool {
	return ofOneKind(terms) && p.within(terms, 2)
}

// ofOneKind reports whether each of some connectors is called after a device that carries something out or feels something, with one word
// for it and other words beside.
func ofOneKind(terms []*draft.Term) bool {
	word := ""
	for _, t := range terms {
		w := name.Words(table.Fold(calledAs(t)))
		at := slices.IndexFunc(w, isUser)
		if at < 0 || word != "" && w[at] != word || len(w) < 2 || slices.ContainsFunc(w, saysEnd) {
			return false
		}
		word = w[at]
	}
	return true
}

// within reports whether all names of the connector that has the fewest, some at least, stand in the same cavities of the others.
func (p *plugs) within(terms []*draft.Term, least int) bool {
	p.look()
	few := slices.MinFunc(terms, func(a, b *draft.Term) int { return len(p.nets[a]) - len(p.nets[b]) })
	if len(p.nets[few]) < least {
		return false
	}
	for net, pin := range p.nets[few] {
		if slices.ContainsFunc(terms, func(t *draft.Term) bool { return p.nets[t][net] != pin }) {
			return false
		}
	}
	return true
}

// saysEnd reports whether a word is of one end of a lead, which another connector is the other end of.
func saysEnd(w string) bool {
	switch w {
	case "end", "side", "male", "female", "loom", "harness", "cable", "lead", "extension", "ende", "seite", "bout", "cote", "lado", "lato",
		"strona", "kant", "zijde":
		return true
	}
	return false
}

// calledAs is what a list calls a connector.
func calledAs(t *draft.Term) string {
	if t.Name.Set {
		return t.Name.V
	}
	return t.ID
}

// isUser reports whether a word is of a device that stands at the end of its wires. From memory, no source.
func isUser(w string) bool {
	switch strings.TrimRight(w, "s") {
	case "motor", "servo", "stepper", "lamp", "light", "headlight", "headlamp", "indicator", "winker", "fan", "pump", "valve", "solenoid",
		"sensor", "encoder", "injector", "coil", "speaker", "horn", "heater", "actuator", "thruster", "probe", "caliper", "brake",
		"motore", "moteur", "lampe", "leuchte", "blinker", "lufter", "pumpe", "ventil", "fuhler", "capteur", "lampada", "faro", "bomba",
		"sensore", "ventilador", "ventilator", "silnik", "czujnik", "lampa", "voeler", "klep":
		return true
	}
	return false
}

// same reports whether some connectors have the same names in the same cavities, some of them at least, and none has another.
func (p *plugs) same(terms []*draft.Term, least int) bool {
	if p.look(); len(p.nets[terms[0]]) < least {
		return false
	}
	first := p.nets[terms[0]]
	return !slices.ContainsFunc(terms[1:], func(t *draft.Term) bool {
		if len(p.nets[t]) != len(first) {
			return true
		}
		for net, pin := range first {
			if p.nets[t][net] != pin {
				return true
			}
		}
		return false
	})
}

// saysBus reports whether a name is of a line that runs from device to device. From memory, no source.
func saysBus(signal string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(signal)), func(w string) bool {
		switch w {
		case "can", "canh", "canl", "can1", "can2", "lin", "bus", "rs485", "rs422", "i2c", "sda", "scl", "spi", "flexray", "nmea":
			return true
		}
		return false
	})
}
