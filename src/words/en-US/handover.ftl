handover-crew-does = One for each of the crew, to be read from two meters.
