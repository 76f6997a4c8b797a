package name

// Field is what a column means.
type Field string

// The fields, as a recipe writes them.
const (
	FieldWire      Field = "wire" // id of the wire
	FieldFrom      Field = "from" // connector, with or without its cavity
	FieldFromPin   Field = "from pin"
	FieldTo        Field = "to"
	FieldToPin     Field = "to pin"
	FieldRun       Field = "from and to" // both in one cell, "P1-A -> J1-3"
	FieldConnector Field = "connector"   // of a pin table that holds several
	FieldPin       Field = "pin"
	FieldSignal    Field = "signal" // what the wire is for; in a pin table the name of the net
	FieldGauge     Field = "gauge"  // size, or a cable
	FieldSpec      Field = "spec"   // specification or part number of the wire
	FieldColour    Field = "colour"
	FieldStripe    Field = "stripe" // second colour in a column of its own
	FieldLength    Field = "length"
	FieldCurrent   Field = "current"
	FieldUnit      Field = "unit" // of the gauge, length or current in the column before
	FieldFuse      Field = "fuse"
	FieldNote      Field = "note"
	FieldCable     Field = "cable" // wires with one text here are one cable
	FieldContact   Field = "contact size"
	FieldVia       Field = "through"           // cavity of a bulkhead that stands between the two ends
	FieldDevicePin Field = "pin of the device" // that its heading names: one of several such columns
	FieldKeep      Field = "keep"              // not understood: goes into the note with its heading
	FieldIgnore    Field = "ignore"            // left out

	FieldNumber Field = "number" // "No.": id of a wire or number of a pin, as the others say
)

// Fields lists the fields that a recipe may give.
func Fields() []Field {
	return []Field{FieldWire, FieldFrom, FieldFromPin, FieldTo, FieldToPin, FieldRun, FieldConnector, FieldPin, FieldSignal, FieldGauge,
		FieldSpec, FieldColour, FieldStripe, FieldLength, FieldCurrent, FieldUnit, FieldFuse, FieldNote, FieldCable,
		FieldContact, FieldVia, FieldDevicePin, FieldKeep, FieldIgnore}
}

// Meaning is what one heading says.
type Meaning struct {
	Field Field
	Lang  string // the one language that has the word; "" where several do
	Weak  bool   // a word of one or two letters, which a cavity could be as well
}

// Weight is how much a column says of a wire (no source).
func (f Field) Weight() float64 {
	switch f {
	case FieldPin, FieldFrom, FieldTo, FieldFromPin, FieldToPin, FieldRun, FieldVia,
		FieldDevicePin:
		return 3
	case FieldSignal, FieldGauge, FieldColour, FieldConnector, FieldWire:
		return 2
	case FieldKeep:
		return 0.3
	}
	return 1
}
