// Package crimp says how a contact goes onto a wire: how long to strip, with which tool
// at which setting, and how hard the joint must hold when a sample is pulled.
//
// What it does not do. Strip length belongs to a contact's part number; what is worked
// out here from well depth and insulation gap is practice. Settings of a tool belong to
// the plate of its positioner, which rules. Whatever stands as memory is to be checked.
package crimp
