package heattest

import (
	"encoding/json"
	"fmt"

	"contralay/model/unit"
)

// Wire is one wire of a cross-section.
type Wire struct {
	X, Y      unit.Millimetre      // its centre, from the axis of the sheath
	Over      unit.Millimetre      // finished diameter
	Conductor unit.Millimetre      // diameter of the conductor
	OhmPerKm  unit.OhmPerKilometre // at 20 °C
	Amps      unit.Ampere
}

// Case is a cross-section with its currents in still air at sea level.
type Case struct {
	Name        string
	Wires       []Wire
	SheathInner unit.Millimetre // inside diameter; the axis is at 0, 0
	SheathWall  unit.Millimetre
	Air         unit.Celsius // round the bundle
	Want        Result       // what finite volumes gave; empty in a case that was not solved
}

// Result is a cross-section in balance.
type Result struct {
	Conductors []unit.Celsius // of each wire, in the order of the case
	Surface    unit.Celsius   // mean of the outside of the sheath
}

// Hottest is the temperature of the hottest conductor.
func (r Result) Hottest() unit.Celsius {
	hot := unit.Celsius(-kelvin)
	for _, t := range r.Conductors {
		hot = max(hot, t)
	}
	return hot
}

// stored is a case as the file has it: short, a case a line.
type stored struct {
	Name  string       `json:"name"`
	Air   float64      `json:"air_c"`
	Inner float64      `json:"sheath_inner_mm"`
	Wall  float64      `json:"sheath_wall_mm"`
	Wires [][6]float64 `json:"wires"` // x, y, over, conductor in mm; ohm_per_km at 20 °C; amps
	Temp  []float64    `json:"conductor_c"`
	Skin  float64      `json:"surface_c"`
}

// UnmarshalJSON reads a case of volumes.json.
func (c *Case) UnmarshalJSON(text []byte) error {
	var s stored
	if err := json.Unmarshal(text, &s); err != nil {
		return err
	}
	if len(s.Temp) != len(s.Wires) {
		return fmt.Errorf("case %q has %d wires and %d temperatures", s.Name, len(s.Wires), len(s.Temp))
	}
	*c = Case{Name: s.Name, Air: unit.Celsius(s.Air), SheathInner: unit.Millimetre(s.Inner), SheathWall: unit.Millimetre(s.Wall)}
	for i, w := range s.Wires {
		c.Wires = append(c.Wires, Wire{X: unit.Millimetre(w[0]), Y: unit.Millimetre(w[1]), Over: unit.Millimetre(w[2]),
			Conductor: unit.Millimetre(w[3]), OhmPerKm: unit.OhmPerKilometre(w[4]), Amps: unit.Ampere(w[5])})
		c.Want.Conductors = append(c.Want.Conductors, unit.Celsius(s.Temp[i]))
	}
	c.Want.Surface = unit.Celsius(s.Skin)
	return nil
}

// MarshalJSON writes a case as volumes.json has it.
func (c Case) MarshalJSON() ([]byte, error) {
	s := stored{Name: c.Name, Air: float64(c.Air), Inner: float64(c.SheathInner), Wall: float64(c.SheathWall),
		Skin: float64(c.Want.Surface)}
	for i, w := range c.Wires {
		s.Wires = append(s.Wires, [6]float64{float64(w.X), float64(w.Y), float64(w.Over), float64(w.Conductor), float64(w.OhmPerKm),
			float64(w.Amps)})
		s.Temp = append(s.Temp, float64(c.Want.Conductors[i]))
	}
	return json.Marshal(s)
}
