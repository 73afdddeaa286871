package org.snugsheet.office.harness;

import com.sun.star.connection.XConnection;
import com.sun.star.io.IOException;
import java.io.ByteArrayOutputStream;
import java.net.SocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;

/**
 * The line to the office, over a channel of the JDK.
 *
 * <p>The UNO classes bring a pipe of their own, but it needs a native library that only the office's Java loader
 * finds; a test started from an editor would not. On every Unix the office's pipe is a plain local socket, and the JDK
 * can talk to one of those since Java 16.
 *
 * <p>The UNO classes write a message in three parts and read the first two numbers of an answer byte by byte, and each time one of the two programs
 * would wake the other. So whole messages are sent, and what has come is read together.
 */
final class ChannelConnection implements XConnection {
    private static final int READ_AHEAD = 1 << 16;

    private final SocketChannel channel;
    private final String description;

    /** What has come and nobody has asked for yet. */
    private final ByteBuffer ahead = ByteBuffer.allocateDirect(READ_AHEAD).limit(0);

    /** The parts of a message that is not whole yet. */
    private final ByteArrayOutputStream waiting = new ByteArrayOutputStream();

    private ChannelConnection(SocketChannel channel, String description) {
        this.channel = channel;
        this.description = description;
    }

    static ChannelConnection to(SocketAddress address) throws java.io.IOException {
        return new ChannelConnection(SocketChannel.open(address), address.toString());
    }

    /**
     * Waits for all bytes that are wanted; fewer mean that the office hung up. All of them, as the office’s own connections do: the office’s
     * reader asks for the rest of a large answer with a wrong count, which is negative when more than half of it had come.
     */
    @Override
    public int read(byte[][] bytes, int wanted) throws IOException {
        byte[] found = new byte[wanted];
        int count = 0;
        try {
            while (count < wanted && (ahead.hasRemaining() || readAhead())) {
                int part = Math.min(ahead.remaining(), wanted - count);
                ahead.get(found, count, part);
                count += part;
            }
            bytes[0] = found;
            return count;
        } catch (java.io.IOException e) {
            throw failure(e);
        }
    }

    /** False if the office hung up. */
    private boolean readAhead() throws java.io.IOException {
        boolean isOpen = channel.read(ahead.clear()) >= 0;
        ahead.flip();
        return isOpen;
    }

    @Override
    public void write(byte[] bytes) {
        synchronized (waiting) {
            waiting.writeBytes(bytes);
        }
    }

    @Override
    public void flush() throws IOException {
        synchronized (waiting) {
            ByteBuffer message = ByteBuffer.wrap(waiting.toByteArray());
            waiting.reset();
            try {
                while (message.hasRemaining()) {
                    channel.write(message);
                }
            } catch (java.io.IOException e) {
                throw failure(e);
            }
        }
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } catch (java.io.IOException e) {
            throw failure(e);
        }
    }

    @Override
    public String getDescription() {
        return description;
    }

    private static IOException failure(java.io.IOException cause) {
        return new IOException(cause);
    }
}
