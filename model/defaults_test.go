package model

import (
	"reflect"
	"testing"

	"contralay/model/typedtest"
	"contralay/model/unit"
)

// TestDefaultsByValue holds every default of the shop rules to what was decided for it, and says from where. The rules
// of the shop's own design are ours, common practice, no source, unless another is named.
func TestDefaultsByValue(t *testing.T) {
	drop := func(kind string) unit.Volt {
		v, ok := typedtest.Must(t, "table_11_6").Number("14", kind)
		if !ok {
			t.Fatalf("no %s drop at 14 V", kind)
		}
		return unit.Volt(v)
	}
	want := map[string]any{
		"LayRatio":     unit.Ratio(12),                        // design 6.1
		"LiftMax":      unit.Ratio(0.05),                      // design 6.1
		"LiftTight":    unit.Ratio(0.08),                      // design 6.1
		"LiftStop":     unit.Ratio(0.12),                      // design 6.1
		"GapInner":     unit.Ratio(0.10),                      // design 6.1
		"GapOuter":     unit.Ratio(0.15),                      // design 6.1
		"LumpyAt":      unit.Ratio(1.3),                       // design 6.1
		"FillerWeight": unit.Ratio(0.1),                       // design 6.1
		"SpareGain":    unit.Ratio(0.15),                      // design 6.1
		"SparesWanted": 0,                                     // design 6.1
		"LaidFrom":     7,                                     // design 6.3
		"LeaverWeight": unit.Millimetre(0.2),                  // design 6.4
		"ZoneMM":       unit.Millimetre(25),                   // design 6.0
		"ZoneLump":     unit.Ratio(1.2),                       // design 6.4
		"CutStepMM":    unit.Millimetre(10),                   // design 6.6
		"TailFirstMM":  unit.Millimetre(100),                  // design 6.6
		"TailSecondMM": unit.Millimetre(75),                   // design 6.6
		"LoopMM":       unit.Millimetre(16),                   // design 6.0
		"LoopPlainMM":  unit.Millimetre(8),                    // design 6.0: where no insert is given
		"BundleMargin": unit.Ratio(0.85),                      // design 6.7
		"AmbientC":     unit.Celsius(40),                      // design 6.0
		"AltitudeM":    unit.Metre(0),                         // the sea
		"DropMaxV":     drop("continuous_v"),                  // AC 43.13-1B table 11-6
		"DropShortV":   drop("intermittent_v"),                // AC 43.13-1B table 11-6, quoted second hand
		"FeedLoadMax":  unit.Ratio(0.8),                       // common practice, no source
		"BeforeMaxMM":  unit.Millimetre(180),                  // common practice, no source: seven inches
		"SizeMin":      "24",                                  // application notes on AS22759: 24 AWG and larger preferred
		"Outer":        HandLeft,                              // design 6.0
		"Spec":         "AS22759/32",                          // design 6.0
		"FillerStock":  []unit.Millimetre(nil),                // design 6.0: []
		"FillerOf":     "",                                    // not said
		"TapeMM":       unit.Millimetre(0.1),                  // from memory
		"TapeWideMM":   unit.Millimetre(19),                   // from memory
		"Adhesive":     "",                                    // not said
		"PotLifeMin":   0,                                     // its sheet says
		"PackJoints":   4,                                     // common practice, no source
		"FillerC":      Opt[unit.Celsius]{},                   // read off the sheet
		"AdhesiveC":    Opt[unit.Celsius]{},                   // read off the sheet
		"ColourStock":  append([]string(nil), everyColour...), // every code there is, held by TestColourCodes
	}
	got := reflect.ValueOf(Rules{}.Resolve())
	for k := range got.NumField() {
		name := got.Type().Field(k).Name
		w, known := want[name]
		if !known {
			t.Errorf("%s: nobody wrote down what it is by default", name)
			continue
		}
		if g := got.Field(k).Interface(); !reflect.DeepEqual(g, w) {
			t.Errorf("%s: %v by default, want %v", name, g, w)
		}
		delete(want, name)
	}
	for name := range want {
		t.Errorf("%s is no rule", name)
	}
}
