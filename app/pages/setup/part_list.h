#pragma once

#include "app/pages/setup/setup_view.h"
#include "app/theme/theme.h"

#include <QFrame>

#include <set>

class QLabel;
class QProgressBar;

namespace rig {

class ChoiceBox;
class RowList;

QString titleOf(SetUpPart part);

// The parts of Set up at the left, each with what is there, and who enters.
class PartList : public QFrame
{
    Q_OBJECT

public:
    explicit PartList(QWidget* parent = nullptr);

    void setLook(const Look& look);
    void display(const SetUpView& view, SetUpPart current, const std::set<SetUpPart>& unsaved);
    std::optional<PersonId> statedBy() const;

signals:
    void partChosen(rig::SetUpPart part); // the focus stays in the list
    void partOpened(rig::SetUpPart part); // and the focus wants to go there
    void statedByChosen();

private:
    void showPeople(const SetUpView& view);

    QLabel* m_progress = nullptr;
    QProgressBar* m_bar = nullptr;
    RowList* m_rows = nullptr;
    QWidget* m_who = nullptr;
    ChoiceBox* m_statedBy = nullptr;
};

} // namespace rig
