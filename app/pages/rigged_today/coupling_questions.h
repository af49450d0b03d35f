#pragma once

#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/widgets/question_tile.h"

#include <QObject>

#include <array>

class QLabel;
class QLayout;
class QPushButton;
class QVBoxLayout;

namespace rig {

// What is asked at a joint: the look, which folds into one line once it is answered, then pull and secure.
class CouplingQuestions : public QObject
{
    Q_OBJECT

public:
    CouplingQuestions(QVBoxLayout* look, QLayout* pull, QObject* parent);

    void display(const CouplingSheet& sheet);
    // The pull as far as the sheet goes, or opened or shut by a reading that is not saved yet.
    void showPull(const CouplingSheet& sheet);
    void openPull(bool isOpenNow);
    // The look that is folded away, shown once more or away again; false while it is not answered.
    bool toggleLook();
    void foldLook() { m_isLookWanted = false; }
    QuestionTile* tile(CheckKind kind) const { return m_tiles[static_cast<std::size_t>(kind)]; }

signals:
    void answered(rig::CheckKind kind, rig::Answer answer);

private:
    void addLine(QVBoxLayout* layout);
    void addTile(QLayout* layout, CheckKind kind, const char* name, AnswerChoice choice);
    void showPart(CheckKind kind, const CouplingSheet& sheet, bool isOpen);
    void showLook(const CouplingSheet& sheet);
    void fold();

    std::array<QuestionTile*, kCheckKinds.size()> m_tiles{};
    bool m_isLookWanted = false; // although it is answered
    QWidget* m_look = nullptr;
    QWidget* m_looked = nullptr; // the same in one line, once it is answered
    QLabel* m_lookedText = nullptr;
    QPushButton* m_lookAgain = nullptr;
};

} // namespace rig
