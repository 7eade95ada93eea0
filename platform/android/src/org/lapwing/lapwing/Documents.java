// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

package org.lapwing.lapwing;

import android.app.Activity;
import android.content.ActivityNotFoundException;
import android.content.Context;
import android.content.Intent;
import android.database.Cursor;
import android.net.Uri;
import android.provider.OpenableColumns;

import java.io.File;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.Map;

/**
 * Files from and to other programs, by the system's own file chooser. What comes in is copied into the cache, since a
 * content URI is no file and its permission ends; what goes out is a copy. Both on threads of their own: the other
 * program may have to fetch the file first.
 */
final class Documents {
    private static final int FIRST_REQUEST = 0x4c00;  // Qt's own requests stay below

    private static int next = FIRST_REQUEST;
    private static boolean listening = false;
    /** Requests in front of the person: the file to copy out, or "" when one is to come in. */
    private static final Map<Integer, String> asked = new HashMap<>();
    /** What arrived before C++ listened: path and error. */
    private static final ArrayDeque<String[]> early = new ArrayDeque<>();

    private Documents() {}

    /** `path` is empty when the person changed their mind; `error` is empty when there was none. */
    private static native void picked(int request, String path, String error);

    private static native void opened(String path, String error);

    static synchronized void listen() {
        listening = true;
        for (String[] one : early) opened(one[0], one[1]);
        early.clear();
    }

    /** Shows the chooser for one existing file; -1 when there is none. */
    static synchronized int open(Activity activity, String type) {
        Intent intent = new Intent(Intent.ACTION_OPEN_DOCUMENT);
        intent.addCategory(Intent.CATEGORY_OPENABLE);
        // Few programs know the type of a session file, and a file of unknown type could not be chosen.
        intent.setType(type.startsWith("image/") || type.startsWith("audio/") ? type : "*/*");
        return show(activity, intent, "");
    }

    /** Asks where a copy of `file` goes; -1 when there is no chooser. */
    static synchronized int save(Activity activity, String file, String name, String type) {
        Intent intent = new Intent(Intent.ACTION_CREATE_DOCUMENT);
        intent.addCategory(Intent.CATEGORY_OPENABLE);
        intent.setType(type.isEmpty() ? "application/octet-stream" : type);
        intent.putExtra(Intent.EXTRA_TITLE, name);
        return show(activity, intent, file);
    }

    private static int show(Activity activity, Intent intent, String file) {
        int request = next++;
        try {
            asked.put(request, file);
            activity.startActivityForResult(intent, request);
            return request;
        } catch (ActivityNotFoundException none) {
            asked.remove(request);
            return -1;
        }
    }

    static synchronized boolean answered(Activity activity, int request, int result, Intent data) {
        String file = asked.remove(request);
        if (file == null) return false;
        Uri uri = result == Activity.RESULT_OK && data != null ? data.getData() : null;
        if (uri == null) {
            picked(request, "", "");
            return true;
        }
        Context context = activity.getApplicationContext();
        new Thread(() -> {
            try {
                picked(request, file.isEmpty() ? bringIn(context, uri) : takeOut(context, file, uri), "");
            } catch (IOException | RuntimeException failed) {
                picked(request, "", reason(failed));
            }
        }).start();
        return true;
    }

    /** A file that another program opened with this app, or shared with it. */
    static void receive(Activity activity, Intent intent) {
        if (intent == null) return;
        Uri uri = Intent.ACTION_VIEW.equals(intent.getAction()) ? intent.getData() : null;
        if (Intent.ACTION_SEND.equals(intent.getAction())) uri = intent.getParcelableExtra(Intent.EXTRA_STREAM);
        // A file's own path is refused: another program could name one of this app's.
        if (uri == null || !"content".equals(uri.getScheme())) return;
        Uri from = uri;
        Context context = activity.getApplicationContext();
        new Thread(() -> {
            try {
                arrived(bringIn(context, from), "");
            } catch (IOException | RuntimeException failed) {
                arrived("", reason(failed));
            }
        }).start();
    }

    private static synchronized void arrived(String path, String error) {
        if (listening) opened(path, error);
        else early.add(new String[] {path, error});
    }

    private static String bringIn(Context context, Uri uri) throws IOException {
        String name = nameOf(context, uri);
        // A folder for each, so that a file keeps its name; the system clears the cache.
        File folder = new File(context.getCacheDir(), "received/" + System.nanoTime());
        if (!folder.mkdirs()) throw new IOException("no room in the cache");
        File file = new File(folder, safe(name));
        try (InputStream in = context.getContentResolver().openInputStream(uri);
             OutputStream out = new FileOutputStream(file)) {
            copy(in, out);
        } catch (IOException | RuntimeException failed) {
            file.delete();
            throw failed;
        }
        return file.getPath();
    }

    private static String takeOut(Context context, String file, Uri uri) throws IOException {
        try (InputStream in = new FileInputStream(file);
             OutputStream out = context.getContentResolver().openOutputStream(uri, "wt")) {
            copy(in, out);
        }
        return nameOf(context, uri);
    }

    private static void copy(InputStream in, OutputStream out) throws IOException {
        if (in == null || out == null) throw new IOException("the other program gave no file");
        byte[] block = new byte[1 << 16];
        for (int size = in.read(block); size >= 0; size = in.read(block)) out.write(block, 0, size);
        out.flush();
    }

    private static String nameOf(Context context, Uri uri) {
        String[] wanted = {OpenableColumns.DISPLAY_NAME};
        try (Cursor cursor = context.getContentResolver().query(uri, wanted, null, null, null)) {
            if (cursor != null && cursor.moveToFirst() && cursor.getString(0) != null) return cursor.getString(0);
        } catch (RuntimeException unknown) {
            // The other program doesn't say.
        }
        return uri.getLastPathSegment() == null ? "file" : uri.getLastPathSegment();
    }

    /** The name is another program's: it must not lead out of the folder. */
    private static String safe(String name) {
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1)
                .replace('\0', '_').trim();
        while (last.startsWith(".")) last = last.substring(1);
        if (last.length() > 120) last = last.substring(last.length() - 120);
        return last.isEmpty() ? "file" : last;
    }

    private static String reason(Exception failed) {
        String message = failed.getMessage();
        return message == null || message.isEmpty() ? failed.getClass().getSimpleName() : message;
    }
}
