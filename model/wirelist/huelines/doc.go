// Package huelines makes a table of the wires that a list tells by their colours, as the owners of motorcycles, boats and tractors write
// them: no device has cavities, and each wire is known by its device and its colour.
//
//	### Left handlebar switch
//	* Brown – 12 V in
//	* Yellow/white – high beam → headlight
//
//	Device    | Wires
//	Throttle  | red +, black −, white signal
//
// It is asked before anyone looks for tables. The colours of lamps, of paint and of keys stand in such lines as well: it makes nothing of
// them where no ground and no place where a wire goes says that they are wires.
package huelines
