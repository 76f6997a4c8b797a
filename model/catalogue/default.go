package catalogue

import (
	"bytes"
	"embed"
	"encoding/gob"
	"errors"
	"fmt"
	"maps"
	"slices"
)

//go:embed data/*.toml
var data embed.FS

// packed is the tables of data in a form that is read ten times as fast: reading
// them was half of what a start of the program took. TestPacked makes it and holds
// it to the tables.
//
//go:embed data/packed.gob
var packed []byte

// Default is the catalogue that comes with the program. It is made anew at each
// call: call it once and hand it on. An error means that the program was built from
// broken tables.
func Default() (*Catalogue, error) {
	var p pack
	if err := gob.NewDecoder(bytes.NewReader(packed)).Decode(&p); err != nil {
		return nil, fmt.Errorf("embedded catalogue: %w", err)
	}
	return p.open(), nil
}

// tablesOfData reads the tables themselves.
func tablesOfData() (*Catalogue, error) {
	files, err := data.ReadDir("data") // sorted by name
	if err != nil {
		return nil, err
	}
	all := empty()
	var errs []error
	for _, f := range files {
		if f.Name() == "packed.gob" {
			continue
		}
		r, err := data.Open("data/" + f.Name())
		if err != nil {
			return nil, err
		}
		c, err := Read(r, f.Name())
		if err != nil {
			errs = append(errs, err)
			continue
		}
		all = Merge(all, c)
	}
	return all, errors.Join(errs...)
}

// pack is a catalogue as lists in a fixed order, so that one catalogue packs to one
// text.
type pack struct {
	Wires       []Wire
	Tubes       []Tube
	Boots       []Boot
	Transitions []Transition
	Contacts    []Contact
	Inserts     []named
	Faces       []Face
	Splices     []Splice
	Devices     []Device
	Sources     []Source
}

// named is an insert under one of its names.
type named struct {
	Name   string
	Insert Insert
}

func packOf(c *Catalogue) pack {
	p := pack{Tubes: c.Tubes, Devices: c.Devices}
	for _, k := range slices.SortedFunc(maps.Keys(c.Wires), func(a, b WireKey) int {
		return slices.Compare([]string{a.Spec, a.Size}, []string{b.Spec, b.Size})
	}) {
		p.Wires = append(p.Wires, c.Wires[k])
	}
	for _, k := range sortedNames(c.Boots) {
		p.Boots = append(p.Boots, c.Boots[k])
	}
	for _, k := range sortedNames(c.Transitions) {
		p.Transitions = append(p.Transitions, c.Transitions[k])
	}
	for _, k := range sortedNames(c.Contacts) {
		p.Contacts = append(p.Contacts, c.Contacts[k])
	}
	for _, k := range sortedNames(c.Inserts) {
		p.Inserts = append(p.Inserts, named{k, c.Inserts[k]})
	}
	for _, k := range sortedNames(c.Faces) {
		p.Faces = append(p.Faces, c.Faces[k])
	}
	for _, k := range sortedNames(c.Splices) {
		p.Splices = append(p.Splices, c.Splices[k])
	}
	for _, k := range sortedNames(c.Sources) {
		p.Sources = append(p.Sources, c.Sources[k])
	}
	return p
}

func (p pack) open() *Catalogue {
	c := empty()
	c.Tubes, c.Devices = p.Tubes, p.Devices
	for _, w := range p.Wires {
		c.Wires[w.Key()] = w
	}
	for _, b := range p.Boots {
		c.Boots[b.ID] = b
	}
	for _, t := range p.Transitions {
		c.Transitions[t.ID] = t
	}
	for _, k := range p.Contacts {
		c.Contacts[k.Size] = k
	}
	for _, n := range p.Inserts {
		if n.Insert.Aliases == nil {
			n.Insert.Aliases = []string{} // as Merge leaves it
		}
		c.Inserts[n.Name] = n.Insert
	}
	for _, f := range p.Faces {
		c.Faces[f.ID] = f
	}
	for _, s := range p.Splices {
		c.Splices[s.ID] = s
	}
	for _, s := range p.Sources {
		c.Sources[s.ID] = s
	}
	return c
}
