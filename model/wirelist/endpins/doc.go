// Package endpins parts the ends of wires that say a device and its cavity without a sign that only cavities have between them, "ECU A1",
// "MCU.MISO", once every list is read: all ends of a column together tell whether the last word of each is its cavity.
//
// It makes no termination; package join does.
package endpins
