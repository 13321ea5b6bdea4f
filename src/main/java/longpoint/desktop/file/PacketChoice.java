package longpoint.desktop.file;

import java.nio.file.Path;
import longpoint.packet.Request;

/**
 * What was asked for of a packet, and where it goes.
 *
 * @param folder made if it is not there
 */
public record PacketChoice(Path folder, Request request) {}
