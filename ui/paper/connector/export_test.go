package connector

// BootHours is for the tests of this package.
var BootHours = bootHours
