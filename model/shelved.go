package model

import "contralay/model/unit"

// Shelved is what the catalogue had of one size of wire or one tube when a serial was begun: as much as its limits
// go by. It is no entry of a catalogue; what a file has measured for itself goes before it.
type Shelved struct {
	Spec, Size  Opt[string]               // of a wire
	Part        Opt[string]               // of a tube
	OverMM      Opt[unit.Millimetre]      // finished diameter of a wire
	TolMM       Opt[unit.Millimetre]      // ± on that
	OhmPerKm    Opt[unit.OhmPerKilometre] // of a wire, at most, at 20 °C; unset where it was not known
	RecoveredMM Opt[unit.Millimetre]      // bore of a tube after free recovery
	WallMM      Opt[unit.Millimetre]      // and its wall, without what the shop has learned
}
