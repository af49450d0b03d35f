#include "app/window/file_menu.h"

#include "app/pages/prompts.h"
#include "app/window/file_drop.h"
#include "app/window/recent_files.h"
#include "app/window/salvaging.h"
#include "app/wording/copy_words.h"
#include "app/wording/file_menu_words.h"
#include "app/wording/join_words.h"
#include "app/wording/language.h"
#include "app/wording/manual_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/window_words.h"
#include "core/baseline/baseline.h"
#include "core/store/copies.h"

#include <QAction>
#include <QActionGroup>
#include <QDesktopServices>
#include <QFileInfo>
#include <QUrl>

#include <algorithm>

namespace rig {

namespace {

constexpr int kMostLetters = 40; // of a recent file's name, and of its folder

} // namespace

FileMenu::FileMenu(QWidget& window, Prompts& prompts) : QMenu{&window}, m_window{window}, m_prompts{prompts}
{
    setObjectName("fileRows");
    connect(new FileDrop{window}, &FileDrop::dropped, this,
            [this](const QString& path) { emit fileAsked(path, OpenAs::Existing); });
    add(WindowWords::newFile(), QKeySequence::New, &FileMenu::askNew);
    add(WindowWords::openFile(), QKeySequence::Open, &FileMenu::askOpen);
    addRecent();
    add(WindowWords::openDemo(), {}, &FileMenu::demoAsked);
    add(JoinWords::takeIn(), Qt::CTRL | Qt::Key_I, &FileMenu::takeInAsked);
    add(CopyWords::menu(), Qt::CTRL | Qt::Key_9, &FileMenu::copiesAsked);
    add(FileMenuWords::saveCopy(), Qt::CTRL | Qt::SHIFT | Qt::Key_S, &FileMenu::saveCopy);
    add(FileMenuWords::showFolder(), Qt::CTRL | Qt::SHIFT | Qt::Key_F, &FileMenu::showFolder);
    addSeparator();
    add(WindowWords::largerText(), QKeySequence::ZoomIn, [this] { emit textAsked(1); });
    add(WindowWords::smallerText(), QKeySequence::ZoomOut, [this] { emit textAsked(-1); });
    addColours();
    addLanguages();
    addSeparator();
    add(ManualWords::menu(), Qt::SHIFT | Qt::Key_F1, &FileMenu::manualAsked);
    add(WindowWords::keys(), Qt::Key_F1, [this] { tell(WindowWords::keysText()); });
    add(FileMenuWords::about(), Qt::CTRL | Qt::Key_F1, [this] {
        tell(FileMenuWords::aboutText(QStringLiteral(RIGBAND_VERSION), kMethodVersion,
                                      QLatin1String{qVersion()}));
    });
    add(WindowWords::quit(), QKeySequence::Quit, [this] { m_window.close(); });
}

void FileMenu::setFile(const QString& path)
{
    m_file = path;
}

void FileMenu::checkColours(Scheme scheme)
{
    m_colours.at(scheme)->setChecked(true);
}

template <typename Action> QAction* FileMenu::add(const QString& text, const QKeySequence& key, Action action)
{
    QAction* one = addAction(text);
    one->setShortcut(key);
    m_window.addAction(one); // the key works while the menu is shut
    connect(one, &QAction::triggered, this, action);
    return one;
}

void FileMenu::addRecent()
{
    m_recent = addMenu(FileMenuWords::recent());
    m_recent->setObjectName("recentFiles");
    m_recent->setToolTipsVisible(true);
    connect(this, &QMenu::aboutToShow, this, &FileMenu::fillRecent);
}

void FileMenu::addColours()
{
    QMenu* menu = addMenu(WindowWords::colours());
    menu->setObjectName("colours");
    auto* one = new QActionGroup{menu};
    for (const auto& [scheme, text] : {std::pair{Scheme::Light, WindowWords::lightColours()},
                                       {Scheme::Dark, WindowWords::darkColours()},
                                       {Scheme::Sunlight, WindowWords::sunColours()}}) {
        QAction* row = menu->addAction(text);
        row->setCheckable(true);
        one->addAction(row);
        m_colours[scheme] = row;
        connect(row, &QAction::triggered, this, [this, scheme = scheme] { emit coloursAsked(scheme); });
    }
    menu->addSeparator();
    QAction* next = menu->addAction(WindowWords::nextColours());
    next->setShortcut(Qt::Key_F9);
    m_window.addAction(next); // the key works while the menu is shut
    connect(next, &QAction::triggered, this, &FileMenu::askNextColours);
}

// Round in the order of the rows.
void FileMenu::askNextColours()
{
    auto next = std::ranges::find_if(m_colours, [](const auto& one) { return one.second->isChecked(); });
    if (next == m_colours.end() || ++next == m_colours.end())
        next = m_colours.begin();
    emit coloursAsked(next->first);
}

// Each in its own words, for whoever does not read the one that is spoken.
void FileMenu::addLanguages()
{
    QMenu* menu = addMenu(FileMenuWords::language());
    menu->setObjectName("languages");
    auto* one = new QActionGroup{menu};
    for (const Language& language : languages()) {
        QAction* row = menu->addAction(language.name);
        row->setObjectName(language.code);
        row->setCheckable(true);
        one->addAction(row);
        connect(row, &QAction::triggered, this, [this, code = language.code] {
            if (code != spokenLanguage())
                emit languageAsked(code);
        });
    }
    // Another one may have been asked for and turned away.
    connect(menu, &QMenu::aboutToShow, menu, [menu] {
        for (QAction* row : menu->actions())
            row->setChecked(row->objectName() == spokenLanguage());
    });
}

// As they are by now: another window may have opened one.
void FileMenu::fillRecent()
{
    m_recent->clear();
    const QFontMetrics letters = m_recent->fontMetrics();
    const auto shortened = [&letters](const QString& text) {
        return letters.elidedText(text, Qt::ElideMiddle, kMostLetters * letters.averageCharWidth());
    };
    int number = 0;
    for (const QString& path : recentFiles()) {
        const QFileInfo file{path};
        QAction* one = m_recent->addAction(
            FileMenuWords::recentRow(++number, shortened(file.fileName()), shortened(file.path())));
        one->setToolTip(path);
        connect(one, &QAction::triggered, this, [this, path] { openRecent(path); });
    }
    m_recent->setEnabled(number > 0);
}

void FileMenu::openRecent(const QString& path)
{
    if (QFileInfo::exists(path)) {
        emit fileAsked(path, OpenAs::Existing);
        return;
    }
    forgetRecent(path);
    tell(ProblemWords::sentence({ProblemKind::NoSuchFile, {}}, QFileInfo{path}.fileName()));
}

void FileMenu::askNew()
{
    const QString path = askNewRigband(&m_window, m_prompts);
    if (!path.isEmpty())
        emit fileAsked(path, OpenAs::New);
}

void FileMenu::askOpen()
{
    const QString path = m_prompts.askOpenFile(&m_window, WindowWords::fileFilter());
    if (!path.isEmpty())
        emit fileAsked(path, OpenAs::Existing);
}

// Of the file that was open when this was asked for.
void FileMenu::saveCopy()
{
    const QString file = m_file;
    if (file.isEmpty())
        return tell(FileMenuWords::openOneFirst());
    const QString into = askNewRigband(&m_window, m_prompts);
    if (into.isEmpty())
        return;
    const QString name = QFileInfo{into}.fileName();
    if (const auto made = copyIntoNewBehind(m_window, file, into))
        tell(*made ? FileMenuWords::copySaved(name, QFileInfo{file}.fileName())
                   : ProblemWords::sentence(made->problem(), name));
}

void FileMenu::showFolder()
{
    if (m_file.isEmpty())
        return tell(FileMenuWords::openOneFirst());
    const QString folder = QFileInfo{m_file}.absolutePath();
    if (!QDesktopServices::openUrl(QUrl::fromLocalFile(folder)))
        tell(FileMenuWords::folderIsAt(folder));
}

void FileMenu::tell(const QString& sentence)
{
    m_prompts.tell(&m_window, sentence);
}

} // namespace rig
