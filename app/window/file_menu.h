#pragma once

#include "app/theme/theme.h"
#include "core/store/store_file.h"

#include <QMenu>

#include <map>

class QAction;

namespace rig {

class Prompts;

// What the button File opens. The keys of its rows work in `window` while it is shut. What takes no more than
// the place of the open file it does by itself; the rest it asks of the window.
class FileMenu : public QMenu
{
    Q_OBJECT

public:
    FileMenu(QWidget& window, Prompts& prompts);
    void setFile(const QString& path); // the one that is open; empty: none
    void checkColours(Scheme scheme);

public slots:
    void askNew();
    void askOpen();

signals:
    void fileAsked(const QString& path, OpenAs as); // dropped on the window too
    void demoAsked();
    void takeInAsked();
    void copiesAsked();
    void textAsked(int steps); // larger, or smaller when below 0
    void coloursAsked(Scheme scheme);
    void manualAsked();
    void languageAsked(const QString& code);

private:
    template <typename Action> QAction* add(const QString& text, const QKeySequence& key, Action action);
    void addRecent();
    void addColours();
    void askNextColours();
    void addLanguages();
    void fillRecent();
    void openRecent(const QString& path);
    void saveCopy();
    void showFolder();
    void tell(const QString& sentence);

    QWidget& m_window;
    Prompts& m_prompts;
    QString m_file;
    QMenu* m_recent = nullptr;
    std::map<Scheme, QAction*> m_colours;
};

} // namespace rig
